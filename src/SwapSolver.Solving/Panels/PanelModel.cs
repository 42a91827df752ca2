using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Panels;

/// <summary>The linear program of a panel: what is in the food, so that every printed figure that is held may be true.
/// Masses are in grams, energy in kcal.</summary>
internal sealed class PanelModel
{
    /// <summary>How far a serving that is not held may lie from what is printed, either way [1]: wide enough for any slip
    /// of the pen, and not so wide that a solver's tolerance counts.</summary>
    private const double AnyServing = 100;

    private static readonly ImmutableArray<Fact> Proximates =
        [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other];

    private static readonly ImmutableArray<Fact> PartsOfCarbohydrate =
        [Fact.Fibre, Fact.Sugars, Fact.Starch, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    private static readonly ImmutableArray<Fact> Minerals = [Fact.Sodium, Fact.Potassium, Fact.Calcium, Fact.Iron];

    private readonly PanelCase given;

    private readonly ImmutableDictionary<Fact, int> columns;

    private readonly int food;

    private readonly int kilojoules;

    private readonly int acidLeftOut;

    private readonly int otherCountedIn;

    /// <summary>Builds the rows.</summary>
    /// <param name="given">The panel.</param>
    /// <param name="holds">The figures that must be true.</param>
    /// <param name="norm">What the unknowns are counted for.</param>
    /// <param name="family">Whether what is not printed stays within what the like may be; for 100 g only.</param>
    /// <param name="costs">What one unit of a fact costs.</param>
    public PanelModel(PanelCase given, PanelHolds holds, PanelNorm norm, bool family, params ReadOnlySpan<(Fact Fact, double Cost)> costs)
    {
        this.given = given;
        var serving = given.Serving.Typical;
        var isServing = norm == PanelNorm.Serving;
        food = isServing
            ? Builder.Column("food", serving / AnyServing, serving * AnyServing)
            : Builder.Column("food", 100, 100);
        Servings = isServing
            ? Builder.Column("servings", 1, 1)
            : Builder.Column("servings", 100 / serving / AnyServing, 100 / serving * AnyServing);
        var times = isServing ? serving * AnyServing / 100 : 1;
        var added = ImmutableDictionary.CreateBuilder<Fact, int>();
        foreach (var fact in PanelFacts.Composition)
        {
            double cost = 0;
            foreach (var one in costs)
            {
                cost = one.Fact == fact ? one.Cost : cost;
            }

            var (low, high) = BoundsOf(fact, family);
            added[fact] = Builder.Column(fact.Id, low * times, high * times, cost);
        }

        columns = added.ToImmutable();
        kilojoules = Builder.Column("kilojoules", 0, Fact.Energy.Most * 10 * times);
        acidLeftOut = Builder.Column("acid_left_out", 0, 100 * times);
        otherCountedIn = Builder.Column("other_counted_in", 0, 100 * times);
        AddSums();
        AddEnergy();
        foreach (var line in holds.Lines.Order())
        {
            var interval = given.IntervalOf(line);
            Between(line.ToString(), interval.Low, interval.High, OfLine(line));
        }

        if (holds.Serving)
        {
            Between("serving", given.Serving.Low, given.Serving.High, new Term(food, 1));
        }
    }

    /// <summary>The model, open for more rows.</summary>
    public ModelBuilder Builder { get; } = new();

    /// <summary>Column of the servings in the food.</summary>
    public int Servings { get; }

    /// <summary>One unit of a fact's column in the fact's own unit: minerals are counted in grams.</summary>
    public static double UnitOf(Fact fact) => Minerals.Contains(fact) ? 1000 : 1;

    /// <summary>A fact in a sum.</summary>
    public Term Of(Fact fact, double coefficient = 1) => new(columns[fact], coefficient);

    /// <summary>Facts in a sum.</summary>
    public IEnumerable<Term> Of(IEnumerable<Fact> facts, double coefficient = 1) => facts.Select(fact => Of(fact, coefficient));

    /// <summary>All proximates less the food.</summary>
    public Term[] Excess => [.. Of(Proximates), new Term(food, -1)];

    /// <summary>What a line prints.</summary>
    public Term[] OfLine(PanelLine line)
    {
        var fact = PanelFacts.FactOf(line);
        return line switch
        {
            PanelLine.EnergyKilojoules => [new Term(kilojoules, 1)],
            PanelLine.Salt => [Of(fact, UnitOf(fact) / given.Rules.SodiumPerSalt.Value)],
            // Carbohydrate by difference takes in what the proximates leave out; and organic acid is counted in or not.
            PanelLine.Carbohydrate when given.Law.CarbohydrateHoldsFibre => [Of(fact), new Term(otherCountedIn, 1)],
            PanelLine.Carbohydrate => [Of(fact), Of(Fact.Fibre, -1), new Term(otherCountedIn, 1), new Term(acidLeftOut, -1)],
            _ => [Of(fact, UnitOf(fact))],
        };
    }

    private (double Low, double High) BoundsOf(Fact fact, bool family)
    {
        var most = fact.Most / UnitOf(fact);
        return !given.MayHold(fact) ? (0, 0)
            : family && !given.IsPrinted(fact) && given.FamilyOf(fact) is { } range ? (range.Low / UnitOf(fact), range.High / UnitOf(fact))
            : (0, most);
    }

    private void AddSums()
    {
        // The tolerance goes with the servings, as the figures do; so leaving the serving away does not dilute it.
        var slack = new Term(Servings, given.Rules.Tolerance.Share * given.Serving.Typical);
        Term Less(Term term) => term with { Coefficient = -term.Coefficient };
        NotAbove("sum_high", [.. Excess, Less(slack)]);
        NotAbove("sum_low", [.. Excess.Select(Less), Less(slack)]);
        NotAbove("parts_of_carbohydrate", [.. Of(PartsOfCarbohydrate), Of(Fact.Carbohydrate, -1), Less(slack)]);
        NotAbove("saturated_of_fat", Of(Fact.SaturatedFat), Of(Fact.Fat, -1));
        NotAbove("erythritol_of_polyols", Of(Fact.Erythritol), Of(Fact.Polyols, -1));
        NotAbove("minerals_of_ash", [.. given.Rules.AshPerMineral.Select(pair => Of(pair.Key, pair.Value.Value)), Of(Fact.Ash, -1), Less(slack)]);
        NotAbove("acid_left_out", new Term(acidLeftOut, 1), Of(Fact.OrganicAcid, -1));
        NotAbove("other_counted_in", new Term(otherCountedIn, 1), Of(Fact.Alcohol, -1), Of(Fact.Other, -1));
    }

    private void AddEnergy()
    {
        NotAbove("energy_high", [Of(Fact.Energy), .. EnergyTerms.Most(given).Select(pair => Of(pair.Key, -pair.Value))]);
        NotAbove("energy_low", [Of(Fact.Energy, -1), .. EnergyTerms.Least(given).Select(pair => Of(pair.Key, pair.Value))]);
        var ratio = given.Rules.Energy.KilojoulesPerKcal;
        NotAbove("kilojoules_high", new Term(kilojoules, 1), Of(Fact.Energy, -ratio.High));
        NotAbove("kilojoules_low", new Term(kilojoules, -1), Of(Fact.Energy, ratio.Low));
    }

    /// <summary>So much a serving.</summary>
    private void Between(string name, double low, double high, params Term[] terms)
    {
        NotAbove($"{name}_high", [.. terms, new Term(Servings, -high)]);
        NotAbove($"{name}_low", [.. terms.Select(term => term with { Coefficient = -term.Coefficient }), new Term(Servings, low)]);
    }

    private void NotAbove(string name, params Term[] terms) => Builder.Row(name, terms, double.NegativeInfinity, 0);
}
