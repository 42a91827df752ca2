using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Numerics.Tensors;
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

    private double[]? ordered;

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

    /// <summary>Where some facts stand in their ranges, by ingredient; those that have no range stand nowhere.</summary>
    /// <param name="facts">The facts.</param>
    internal IEnumerable<(Ingredient Ingredient, Fact Fact, RangeParts Parts)> PartsOf(IReadOnlySet<Fact> facts) =>
        from bag in bags
        from fact in bag.Value.Shares.Keys
        where facts.Contains(fact)
        select (bag.Key, fact, bag.Value.PartsOf(fact));

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
            if (levels is [var single] && BandOfAll(hold, reference) is { } same)
            {
                if (!double.IsNaN(single) && same.Of(new Level(single)) != Standing.Inside)
                {
                    return new bool[Bags.Kitchens];
                }

                continue;
            }

            var bandIn = BandsOf(hold, reference);
            for (var kitchen = 0; kitchen < keeps.Length; kitchen++)
            {
                var level = At(levels, kitchen);
                keeps[kitchen] = keeps[kitchen] && (double.IsNaN(level) || bandIn(kitchen).Of(new Level(level)) == Standing.Inside);
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
        var passed = new double[Bags.Kitchens];
        for (var kitchen = 0; kitchen < passed.Length; kitchen++)
        {
            var level = At(levels, kitchen);
            passed[kitchen] = double.IsNaN(level) ? double.NegativeInfinity : Passed(bandIn(kitchen), level) / unit;
        }

        return passed;
    }

    /// <summary>The 5th and the 95th percentile of a reading; its typical value where it has no spread. Lines that were not
    /// weighed are drawn too, so both formulas have one line an ingredient where there are such lines.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference)
    {
        var all = measured.MayWeigh.Count == 0 ? Levels(balance, formula, reference) : Filled(balance, formula, reference);
        var levels = ToBeOrdered(all);
        return levels.Length == 0
            ? (new Level(0), new Level(0))
            : (new Level(ArrayStatistics.OrderStatisticInplace(levels, (levels.Length / 20) + 1)), new Level(ArrayStatistics.OrderStatisticInplace(levels, levels.Length - (levels.Length / 20))));
    }

    /// <summary>A copy of what there is of some levels: it is put in order. Where all are there it is good until the next.</summary>
    private double[] ToBeOrdered(double[] all)
    {
        if (all.Length != Bags.Kitchens || TensorPrimitives.IsNaNAny<double>(all))
        {
            return [.. all.Where(level => !double.IsNaN(level))];
        }

        all.CopyTo(ordered ??= GC.AllocateUninitializedArray<double>(Bags.Kitchens), 0);
        return ordered;
    }

    private double[] Levels(Balance balance, Formula formula, Formula reference)
    {
        var key = (balance, formula, reference);
        return read.TryGetValue(key, out var levels)
            ? levels
            : read[key] = SampledReading.Of(balance, formula, reference, ingredient => bags[ingredient], Bags.Kitchens);
    }

    /// <summary>A reading by kitchen where each kitchen fills its cups in its own way.</summary>
    private double[] Filled(Balance balance, Formula formula, Formula reference) =>
    [
        .. Enumerable.Range(0, Bags.Kitchens)
            .Select(kitchen => balance.Read(Filled(formula, kitchen), Filled(reference, kitchen), In(kitchen))?.Value ?? double.NaN),
    ];

    private Formula Filled(Formula formula, int kitchen) => measured.Filled(formula, (ingredient, grams) => grams.At(fillings[ingredient][kitchen]));

    private Draw In(int kitchen) => ingredient => bags[ingredient].In(kitchen);

    /// <summary>The band of a hold where all kitchens have the same; null where they may differ.</summary>
    private Band? BandOfAll(Hold hold, Formula reference) =>
        hold.Share is null && !hold.IsAnchored ? hold.Band
        : Levels(hold.Balance, reference, reference) is [var own] && !double.IsNaN(own) ? BandsOf(hold, reference)(0)
        : null;

    private static double At(double[] levels, int kitchen) => levels.Length == 1 ? levels[0] : levels[kitchen];

    /// <summary>The band of a hold by kitchen, as <see cref="Models.Scenario.BandOf"/>: one that hangs on the reference's reading moves with it.</summary>
    private Func<int, Band> BandsOf(Hold hold, Formula reference)
    {
        if (hold.Share is null && !hold.IsAnchored)
        {
            return _ => hold.Band;
        }

        // Made once and moved from kitchen to kitchen: thousands of small objects would cost more than what they compute.
        var at = 0;
        var ownLevels = new Lazy<double[]>(() => Levels(hold.Balance, reference, reference));
        Func<Level?> own = () => At(ownLevels.Value, at) is var level && double.IsNaN(level) ? null : new Level(level);
        Draw draw = ingredient => bags[ingredient].In(at);
        return kitchen =>
        {
            at = kitchen;
            return hold.Share is { } share ? share.Of(own()) : hold.Balance.Around(own, reference, draw);
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
