using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Formulas;
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

    private const double HundredGrams = 100;

    /// <summary>Grams of salt that stand for a gram of sodium, by EU 1169/2011 annex I [1].</summary>
    private const double SaltBySodium = 2.5;

    private const string Goal = "goal";

    /// <summary>Of what is to be more it means at least so much: the fibre up to 5 g.</summary>
    private const string UpTo = "up to";

    /// <summary>So little is no milligrams of sodium a slice [mg]: a loaf without any salt has more; our estimate, no source.</summary>
    private const double LeastMilligrams = 5;

    /// <summary>Readings of which less is a goal, and the goal.</summary>
    private static readonly ImmutableArray<(string Reading, string Goal)> Lesser =
    [
        ("net-carbohydrate", "fewer-net-carbs"), ("sugars", "less-sugar"), ("salt", "less-salt"), ("sodium", "less-salt"), ("energy", "less-energy"), ("fat", "less-fat"), ("price", "cheaper"), (Eggs, "fewer-eggs"),
    ];

    private static readonly ImmutableArray<(string Reading, string Goal)> Greater = [("protein", "more-protein"), ("fibre", "more-fibre")];

    /// <summary>What a loaf is asked to have at least where nothing else is said.</summary>
    private static readonly ImmutableHashSet<string> Wished = ["protein", "fibre"];

    private static readonly ImmutableHashSet<string> OfTheLoaf = ["price", Eggs];

    /// <summary>The target of a clause with its figures; null where no such reading is kept.</summary>
    public AskedTarget? Figures(Clause clause, Formula formula, bool isSized, List<string> assumed)
    {
        var lexeme = clause.First(Reading)!;
        var reading = ReadingOf(lexeme);
        var kept = OfTheLoaf.Contains(reading) ? PerLoaf : PerSlice;
        // Of small cakes one is a piece.
        var per = formula.Shape is Pieces && clause.First("per")?.Is("percake") is true ? PerSlice : clause.First("per")?.Means("per") ?? kept;
        // What a slice of another size weighs is not known before it is solved.
        if (per != kept && (kept == PerLoaf || isSized))
        {
            return null;
        }

        var inUnit = clause.Counts.Select(count => InUnit(count, clause.First(Mass), reading, assumed)).ToList();
        var figures = inUnit.Select(one => one.Figure).Order().ToList();
        reading = inUnit[0].Reading;
        if (per != kept)
        {
            figures = [.. figures.Select(figure => Math.Round(figure * InASlice(per, formula), 2))];
            assumed.Add(sentences.Say(
                per == PerLoaf ? "asked-per-loaf" : "asked-per-hundred",
                ("words", clause.Words),
                ("value", string.Join(" - ", figures.Select(figure => figure.ToString(CultureInfo.InvariantCulture)))),
                ("count", formula.Slices.ToString(CultureInfo.InvariantCulture)),
                ("grams", Math.Round(formula.BakedMass.Value / formula.Slices).ToString(CultureInfo.InvariantCulture))));
        }

        if (reading == "net-carbohydrate" && !lexeme.Text.Contains("net", StringComparison.Ordinal))
        {
            assumed.Add(sentences.Say("asked-net-carbs", ("thing", lexeme.Text)));
        }

        return clause.Means switch
        {
            "TARGET_BELOW" when Wished.Contains(reading) && clause.First("below")?.Text == UpTo => Plain(clause, reading, figures[0], assumed),
            "TARGET_ABOVE" or "BARE_ABOVE" => new AskedTarget(reading, figures[0], null),
            // From 3 to 2 is down to 2.
            "TARGET_BETWEEN" when clause.Counts is [var from, var to] && from > to && clause.First("between")?.Text == "from" => new AskedTarget(reading, null, figures[0]),
            "TARGET_BETWEEN" => new AskedTarget(reading, figures[0], figures[^1]),
            "TARGET_PLAIN" => Plain(clause, reading, figures[0], assumed),
            _ => new AskedTarget(reading, null, figures[0]),
        };
    }

    /// <summary>The reading that a word or a goal is about; empty where the goal is about several.</summary>
    public static string ReadingOf(Lexeme lexeme) => lexeme.Is(Reading) ? lexeme.Means(Reading) : lexeme.Text.Contains("salt", StringComparison.Ordinal) ? "salt" : Lesser.Concat(Greater).LastOrDefault(pair => pair.Goal == lexeme.Means(Goal)).Reading ?? string.Empty;

    /// <summary>Whether a goal asks for more of something.</summary>
    public static bool IsGreater(Lexeme lexeme) => lexeme.Is(Goal) && Greater.Any(pair => pair.Goal == lexeme.Means(Goal));

    /// <summary>The goal that less, or more, of a reading is; null where there is none.</summary>
    public static AskedTarget? Word(Clause clause) =>
        (clause.Means == "LESS" ? Lesser : Greater).FirstOrDefault(pair => pair.Reading == clause.First(Reading)!.Means(Reading)).Goal is { } goal ? new AskedTarget(goal, null, null) : null;

    /// <summary>What part of a figure by the loaf, or by 100 g, a slice has.</summary>
    private static double InASlice(string per, Formula formula) =>
        per == PerLoaf ? 1.0 / formula.Slices : formula.BakedMass.Value / formula.Slices / HundredGrams;

    /// <summary>The eggs that a clause asks for; null where it counts something else.</summary>
    public static AskedTarget? EggsOf(Clause clause)
    {
        // Fewer than four are three at the most.
        var most = Wanted(clause) - (clause.First("below")?.Is("strict") is true ? 1 : 0);
        return clause.All("thing").All(lexeme => lexeme.Thing!.Ingredient?.Id == "egg-whole" || lexeme.Thing.LeftOut is "egg" or "eggs")
            ? new AskedTarget(Eggs, clause.Means == "EGGS" ? most : null, most)
            : null;
    }

    /// <summary>Of three instead of four, three; of instead of four three, three too.</summary>
    private static double Wanted(Clause clause) => clause.Parts[0].Part == "instead" ? clause.Counts[^1] : clause.Counts[0];

    private AskedTarget Plain(Clause clause, string reading, double figure, List<string> assumed)
    {
        var isWished = Wished.Contains(reading);
        assumed.Add(sentences.Say(isWished ? "asked-at-least" : "asked-at-most", ("thing", clause.Words)));
        return new AskedTarget(reading, isWished ? figure : null, isWished ? null : figure);
    }

    /// <summary>A figure in the unit of the reading that is kept of it: grams of salt are milligrams of sodium.</summary>
    private (double Figure, string Reading) InUnit(double count, Lexeme? mass, string reading, List<string> assumed)
    {
        var grams = count * (mass?.Number(Mass) ?? 1);
        switch (reading)
        {
            case "salt":
                var milligrams = Math.Round(grams / SaltBySodium * MilligramsPerGram);
                assumed.Add(sentences.Say("asked-salt", ("value", milligrams.ToString(CultureInfo.InvariantCulture))));
                return (milligrams, Sodium);
            case Sodium when mass is not null || count < LeastMilligrams:
                var ofSodium = Math.Round(grams * MilligramsPerGram, 3);
                if (mass is null)
                {
                    assumed.Add(sentences.Say("asked-sodium-grams", ("count", count.ToString(CultureInfo.InvariantCulture)), ("value", ofSodium.ToString(CultureInfo.InvariantCulture))));
                }

                return (ofSodium, reading);
            case Sodium:
                return (count, reading);
            default:
                return (mass is null ? count : Math.Round(grams, 6), reading);
        }
    }
}
