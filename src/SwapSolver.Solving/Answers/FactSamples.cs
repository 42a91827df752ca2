using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>
/// A formula in many kitchens: brands differ, harvests differ. The reference and its variant see the same bag; the verdict
/// is on the change, not on the absolute figure.
/// </summary>
public sealed class FactSamples
{
    private readonly FrozenDictionary<Ingredient, Bag> bags;

    private readonly ImmutableArray<Draw> draws;

    private readonly MeasuredLines measured;

    private readonly FrozenDictionary<Ingredient, double[]> fillings;

    /// <summary>Draws the samples for some ingredients.</summary>
    /// <param name="ingredients">The ingredients.</param>
    /// <param name="measured">What lines may weigh that were not weighed; null where all were.</param>
    /// <param name="drawn">The bags of this question; null for the usual ones.</param>
    public FactSamples(IEnumerable<Ingredient> ingredients, MeasuredLines? measured = null, Bags? drawn = null)
    {
        drawn ??= new Bags();
        this.measured = measured ?? MeasuredLines.None;
        fillings = this.measured.MayWeigh.Keys.ToFrozenDictionary(ingredient => ingredient, drawn.FillingsOf);
        bags = ingredients.Distinct().ToFrozenDictionary(ingredient => ingredient, drawn.Of);
        var sheets = bags.ToFrozenDictionary(pair => pair.Key, pair => pair.Value.Sheets);
        draws = [.. Enumerable.Range(0, Bags.Kitchens).Select(kitchen => (Draw)(ingredient => sheets[ingredient][kitchen]))];
    }

    /// <summary>Where each fact that has a range stands in it, by ingredient and kitchen.</summary>
    public IEnumerable<(Ingredient Ingredient, Fact Fact, double[] Shares)> Shares =>
        bags.SelectMany(bag => bag.Value.Shares.Select(pair => (bag.Key, pair.Key, pair.Value)));

    /// <summary>Share of kitchens in which a formula keeps every band, 0 to 1.</summary>
    public double ChanceOfBalance(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        Balances(holds, reference, formula).Count(keeps => keeps) / (double)Bags.Kitchens;

    /// <summary>Whether a formula keeps every band, by kitchen. Bands that hang on the reference are taken from the
    /// reference in the same kitchen.</summary>
    public bool[] Balances(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        [.. draws.Select(draw => holds.All(hold => Keeps(hold, reference, formula, draw)))];

    /// <summary>By how much a reading passes the worse end of its band, by kitchen, counted in half widths of the band with
    /// typical facts; negative where it is inside; none where there is no band or no reading.</summary>
    public double[] Passed(Hold hold, Formula reference, Formula formula)
    {
        var unit = HalfWidth(Scenario.BandOf(hold, reference, Draws.Typical));
        return unit is null ? [] : [.. draws.Select(draw => Passed(hold, reference, formula, draw) / unit.Value)];
    }

    /// <summary>The 5th and the 95th percentile of a reading; its typical value where it has no spread. Lines that were not
    /// weighed are drawn too, so both formulas have one line an ingredient where there are such lines.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference)
    {
        double[] levels =
        [
            .. draws.Select((draw, kitchen) => balance.Read(Filled(formula, kitchen), Filled(reference, kitchen), draw)).OfType<Level>().Select(level => level.Value).Order(),
        ];
        return levels.Length == 0
            ? (new Level(0), new Level(0))
            : (new Level(levels[levels.Length / 20]), new Level(levels[levels.Length - 1 - (levels.Length / 20)]));
    }

    private Formula Filled(Formula formula, int kitchen) => measured.Filled(formula, (ingredient, grams) => grams.At(fillings[ingredient][kitchen]));

    private static bool Keeps(Hold hold, Formula reference, Formula formula, Draw draw) =>
        hold.Balance.Read(formula, reference, draw) is not { } level || Scenario.BandOf(hold, reference, draw).Of(level) == Standing.Inside;

    private static double Passed(Hold hold, Formula reference, Formula formula, Draw draw)
    {
        var band = Scenario.BandOf(hold, reference, draw);
        return hold.Balance.Read(formula, reference, draw) is { } level
            ? Math.Max(band.Low?.Value - level.Value ?? double.NegativeInfinity, level.Value - band.High?.Value ?? double.NegativeInfinity)
            : double.NegativeInfinity;
    }

    private static double? HalfWidth(Band band) => band switch
    {
        { Low: { } low, High: { } high } when high.Value > low.Value => (high.Value - low.Value) / 2,
        { Low: { Value: > 0 } low } => low.Value / 2,
        { High: { Value: > 0 } high } => high.Value / 2,
        _ => null,
    };
}
