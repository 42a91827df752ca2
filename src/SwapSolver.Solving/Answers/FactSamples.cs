using System.Collections.Frozen;
using System.Collections.Immutable;
using MathNet.Numerics.Statistics;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>
/// A formula in many kitchens: brands differ, harvests differ. The reference and its variant see the same bag; the verdict
/// is on the change, not on the absolute figure.
/// </summary>
public sealed class FactSamples
{
    private readonly FrozenDictionary<Ingredient, Bag> bags;

    private readonly MeasuredLines measured;

    private readonly FrozenDictionary<Ingredient, double[]> fillings;

    // Of one answer: its bands and its readings ask for the same.
    private readonly Dictionary<(Balance Balance, Formula Formula, Formula Reference), double[]> read = new(SameObjects.Instance);

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
    }

    /// <summary>Where each fact that has a range stands in it, by ingredient and kitchen.</summary>
    public IEnumerable<(Ingredient Ingredient, Fact Fact, double[] Shares)> Shares =>
        bags.SelectMany(bag => bag.Value.Shares.Select(pair => (bag.Key, pair.Key, pair.Value)));

    /// <summary>Share of kitchens in which a formula keeps every band, 0 to 1.</summary>
    public double ChanceOfBalance(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        Balances(holds, reference, formula).Count(keeps => keeps) / (double)Bags.Kitchens;

    /// <summary>Whether a formula keeps every band, by kitchen. Bands that hang on the reference are taken from the
    /// reference in the same kitchen.</summary>
    public bool[] Balances(ImmutableArray<Hold> holds, Formula reference, Formula formula)
    {
        var keeps = Enumerable.Repeat(true, Bags.Kitchens).ToArray();
        foreach (var hold in holds)
        {
            var levels = Levels(hold.Balance, formula, reference);
            var bandIn = BandsOf(hold, reference);
            for (var kitchen = 0; kitchen < keeps.Length; kitchen++)
            {
                keeps[kitchen] = keeps[kitchen] && (double.IsNaN(levels[kitchen]) || bandIn(kitchen).Of(new Level(levels[kitchen])) == Standing.Inside);
            }

            if (!keeps.Contains(true))
            {
                break;
            }
        }

        return keeps;
    }

    /// <summary>By how much a reading passes the worse end of its band, by kitchen, counted in half widths of the band with
    /// typical facts; negative where it is inside; none where there is no band or no reading.</summary>
    public double[] Passed(Hold hold, Formula reference, Formula formula)
    {
        if (HalfWidth(Models.Scenario.BandOf(hold, reference, Draws.Typical)) is not { } unit)
        {
            return [];
        }

        var levels = Levels(hold.Balance, formula, reference);
        var bandIn = BandsOf(hold, reference);
        return
        [
            .. levels.Select((level, kitchen) => double.IsNaN(level) ? double.NegativeInfinity : Passed(bandIn(kitchen), level) / unit),
        ];
    }

    /// <summary>The 5th and the 95th percentile of a reading; its typical value where it has no spread. Lines that were not
    /// weighed are drawn too, so both formulas have one line an ingredient where there are such lines.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference)
    {
        double[] levels = [.. (measured.MayWeigh.Count == 0 ? Levels(balance, formula, reference) : Filled(balance, formula, reference)).Where(level => !double.IsNaN(level))];
        return levels.Length == 0
            ? (new Level(0), new Level(0))
            : (new Level(ArrayStatistics.OrderStatisticInplace(levels, (levels.Length / 20) + 1)), new Level(ArrayStatistics.OrderStatisticInplace(levels, levels.Length - (levels.Length / 20))));
    }

    private double[] Levels(Balance balance, Formula formula, Formula reference)
    {
        var key = (balance, formula, reference);
        return read.TryGetValue(key, out var levels)
            ? levels
            : read[key] = SampledReading.Of(balance, formula, reference, ingredient => bags[ingredient], Bags.Kitchens);
    }

    /// <summary>A reading by kitchen where each kitchen fills its cups in its own way.</summary>
    private IEnumerable<double> Filled(Balance balance, Formula formula, Formula reference) => Enumerable.Range(0, Bags.Kitchens)
        .Select(kitchen => balance.Read(Filled(formula, kitchen), Filled(reference, kitchen), In(kitchen))?.Value ?? double.NaN);

    private Formula Filled(Formula formula, int kitchen) => measured.Filled(formula, (ingredient, grams) => grams.At(fillings[ingredient][kitchen]));

    private Draw In(int kitchen) => ingredient => bags[ingredient].In(kitchen);

    /// <summary>The band of a hold by kitchen, as <see cref="Models.Scenario.BandOf"/>: one that hangs on the reference's reading moves with it.</summary>
    private Func<int, Band> BandsOf(Hold hold, Formula reference)
    {
        if (hold.Share is null && !hold.IsAnchored)
        {
            return _ => hold.Band;
        }

        var ownLevels = new Lazy<double[]>(() => Levels(hold.Balance, reference, reference));
        return kitchen =>
        {
            Level? Own() => ownLevels.Value[kitchen] is var own && double.IsNaN(own) ? null : new Level(own);
            return hold.Share is { } share ? share.Of(Own()) : hold.Balance.Around(Own, reference, In(kitchen));
        };
    }

    private static double Passed(Band band, double level) =>
        Math.Max(band.Low?.Value - level ?? double.NegativeInfinity, level - band.High?.Value ?? double.NegativeInfinity);

    private static double? HalfWidth(Band band) => band switch
    {
        { Low: { } low, High: { } high } when high.Value > low.Value => (high.Value - low.Value) / 2,
        { Low: { Value: > 0 } low } => low.Value / 2,
        { High: { Value: > 0 } high } => high.Value / 2,
        _ => null,
    };
}
