using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Solving;
using SwapSolver.Solving.Wishes;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads how a kitchen wants its answers, and its limits on readings.</summary>
internal sealed class HabitsReader(Bakehouse bakehouse, ProblemList problems)
{
    private const string Path = "habits";

    private const int MostLimits = 20;

    private const int MostAllowed = 50;

    private const int UsualMostAnswers = 3;

    /// <summary>The habits, with the usual ones where none are said.</summary>
    /// <param name="habits">The habits of the contract; may be null.</param>
    /// <param name="formula">The formula; its own egg size counts where the habits say none.</param>
    /// <param name="mostAnswers">Most answers that may be asked for.</param>
    public Habits Read(V1.Habits? habits, Domain.Formula formula, int mostAnswers = UsualMostAnswers)
    {
        habits ??= new V1.Habits();
        var usual = Habits.Usual;
        return new Habits(
            Whole(habits.HasNewIngredients, habits.NewIngredients, usual.NewIngredients, 0, 5, "newIngredients"),
            habits.WeighedEgg,
            EggSizes.Read(habits.EggSize, $"{Path}.eggSize", problems) ?? formula.Lines.Select(line => line.Size).FirstOrDefault(size => size is not null) ?? usual.EggSize,
            ScaleStep(habits, usual),
            Whole(habits.HasAnswers, habits.Answers, usual.Answers, 1, mostAnswers, "answers"),
            Sureness(habits),
            habits.ExplainModel)
        {
            Named = ReadAllowed(habits),
        };
    }

    /// <summary>The ingredients that the caller allows besides those that are offered.</summary>
    private ImmutableArray<Ingredient> ReadAllowed(V1.Habits habits)
    {
        if (habits.Allow.Count > MostAllowed)
        {
            problems.Add($"{Path}.allow", habits.Allow.Count, "ingredients are too many", $"give at most {MostAllowed}");
            return [];
        }

        var lines = new LineReader(bakehouse.Pantry, problems);
        var named = habits.Allow.Select((name, index) => lines.IngredientOf(name, $"{Path}.allow[{index}]")).OfType<Ingredient>().Distinct().ToImmutableArray();
        foreach (var ingredient in named)
        {
            KnownFacts.Require(bakehouse.Balances, ingredient, $"{Path}.allow", problems);
        }

        return named;
    }

    /// <summary>The caller's limits on readings.</summary>
    public ImmutableArray<Hold> ReadLimits(V1.Habits? habits)
    {
        if (habits is null)
        {
            return [];
        }

        if (habits.Limits.Count > MostLimits)
        {
            problems.Add($"{Path}.limits", habits.Limits.Count, "limits are too many", $"give at most {MostLimits}");
            return [];
        }

        var bands = new BandReader(problems);
        return [.. habits.Limits.Select((limit, index) => ReadLimit(bands, limit, $"{Path}.limits[{index}]")).OfType<Hold>()];
    }

    /// <summary>Refuses limits where a question has no use for them, so that nobody takes them for kept.</summary>
    public void RefuseLimits(V1.Habits? habits)
    {
        if (habits is { Limits.Count: > 0 })
        {
            problems.Add($"{Path}.limits", habits.Limits.Count, "limits have no use here", "leave them away, or check the swap by itself");
        }
    }

    /// <summary>Refuses what only ranked answers take: a wish for sureness, and to see the model.</summary>
    public void RefuseRanking(V1.Habits? habits)
    {
        if (habits is { ExplainModel: true })
        {
            problems.Add($"{Path}.explainModel", "true", "has no use here", "ask for one answer with its model by a variant or a reformulation");
        }

        if (habits is { HasSurenessPercent: true })
        {
            problems.Add($"{Path}.surenessPercent", habits.SurenessPercent, "has no use here", "leave it away; each line tells in how many kitchens it balances");
        }
    }

    private Hold? ReadLimit(BandReader bands, V1.ReadingLimit limit, string path)
    {
        if (RuleOf(limit, path) is not { } balance)
        {
            return null;
        }

        return bands.Read(limit.Balance, limit.HasLow ? limit.Low : null, limit.HasHigh ? limit.High : null, path) is { } band
            ? new Hold(balance.Id, balance, band, FromCaller: true)
            : null;
    }

    /// <summary>The balance that a limit is on: a reading, or the grams of one ingredient; null where a problem was added.</summary>
    private Balance? RuleOf(V1.ReadingLimit limit, string path)
    {
        if (limit.Balance.StartsWith(LineMass.Prefix, StringComparison.Ordinal))
        {
            return new LineReader(bakehouse.Pantry, problems).IngredientOf(limit.Balance, $"{path}.balance") is { } ingredient ? Targets.OfLine(ingredient, bakehouse.Phrases) : null;
        }

        if (bakehouse.Balances.Find(limit.Balance) is { } balance)
        {
            return balance;
        }

        problems.Add($"{path}.balance", limit.Balance, "is not a balance", NearestNames.WayOut(limit.Balance, bakehouse.Balances.Targetable.Select(known => known.Id)));
        return null;
    }

    private int Whole(bool isSaid, int value, int usual, int least, int most, string field)
    {
        if (!isSaid)
        {
            return usual;
        }

        if (value < least || value > most)
        {
            problems.Add($"{Path}.{field}", value, "is out of range", $"give {least} to {most}");
        }

        return value;
    }

    private Percent? Sureness(V1.Habits habits)
    {
        if (!habits.HasSurenessPercent)
        {
            return null;
        }

        if (!(habits.SurenessPercent is >= 50 and <= 99))
        {
            problems.Add($"{Path}.surenessPercent", habits.SurenessPercent, "is out of range", "give 50 to 99, of 100 kitchens");
            return null;
        }

        return new Percent(habits.SurenessPercent);
    }

    private Grams ScaleStep(V1.Habits habits, Habits usual)
    {
        if (!habits.HasScaleStepGrams)
        {
            return usual.ScaleStep;
        }

        if (!(habits.ScaleStepGrams is >= 0.1 and <= 50))
        {
            problems.Add($"{Path}.scaleStepGrams", habits.ScaleStepGrams, "is no step of a kitchen scale", "give 0.1 to 50 g");
            return usual.ScaleStep;
        }

        return new Grams(habits.ScaleStepGrams);
    }
}
