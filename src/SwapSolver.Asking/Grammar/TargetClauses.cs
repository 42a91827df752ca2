using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Grammar;

/// <summary>Reads what a reading is to become.</summary>
/// <param name="sentences">The sentences.</param>
internal sealed class TargetClauses(Phrases sentences)
{
    private const string Reading = "reading";

    private const string Mass = "mass";

    private const string Sodium = "sodium";

    private const string Eggs = "eggs";

    private const string PerSlice = "slice";

    private const string PerLoaf = "loaf";

    private const double MilligramsPerGram = 1000;

    /// <summary>Grams of salt that stand for a gram of sodium, by EU 1169/2011 annex I [1].</summary>
    private const double SaltBySodium = 2.5;

    private static readonly ImmutableHashSet<string> OfTheLoaf = ["price", Eggs];

    /// <summary>The target of a clause with its figures; null where no such reading is kept.</summary>
    public AskedTarget? Figures(Clause clause, List<string> assumed)
    {
        var lexeme = clause.First(Reading)!;
        var reading = lexeme.Means(Reading);
        if (clause.First("per") is { } per && per.Means("per") != (OfTheLoaf.Contains(reading) ? PerLoaf : PerSlice))
        {
            return null;
        }

        var figures = clause.Counts.Select(count => InUnit(count, clause.First(Mass), ref reading, assumed)).Order().ToList();
        if (reading == "net-carbohydrate" && !lexeme.Text.Contains("net", StringComparison.Ordinal))
        {
            assumed.Add(sentences.Say("asked-net-carbs", ("thing", lexeme.Text)));
        }

        return clause.Means switch
        {
            "TARGET_ABOVE" => new AskedTarget(reading, figures[0], null),
            "TARGET_BETWEEN" => new AskedTarget(reading, figures[0], figures[^1]),
            "TARGET_PLAIN" => Plain(clause, reading, figures[0], assumed),
            _ => new AskedTarget(reading, null, figures[0]),
        };
    }

    /// <summary>The eggs that a clause asks for; null where it counts something else.</summary>
    public static AskedTarget? EggsOf(Clause clause)
    {
        var thing = clause.First("thing")!.Thing!;
        return thing.Ingredient?.Id == "egg-whole" || thing.LeftOut is "egg" or "eggs"
            ? new AskedTarget(Eggs, clause.Means == "EGGS" ? Wanted(clause) : null, Wanted(clause))
            : null;
    }

    /// <summary>Of three instead of four, three; of instead of four three, three too.</summary>
    private static double Wanted(Clause clause) => clause.Parts[0].Part == "instead" ? clause.Counts[^1] : clause.Counts[0];

    private AskedTarget Plain(Clause clause, string reading, double figure, List<string> assumed)
    {
        assumed.Add(sentences.Say("asked-at-most", ("thing", clause.Words)));
        return new AskedTarget(reading, null, figure);
    }

    private double InUnit(double count, Lexeme? mass, ref string reading, List<string> assumed)
    {
        var grams = count * (mass?.Number(Mass) ?? 1);
        switch (reading)
        {
            case "salt":
                reading = Sodium;
                var milligrams = Math.Round(grams / SaltBySodium * MilligramsPerGram);
                assumed.Add(sentences.Say("asked-salt", ("value", milligrams.ToString(CultureInfo.InvariantCulture))));
                return milligrams;
            case Sodium:
                return mass is null ? count : Math.Round(grams * MilligramsPerGram, 3);
            default:
                return mass is null ? count : Math.Round(grams, 6);
        }
    }
}
