using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>What a reference reads and where its bands end, by kitchen: worked out once for all answers to a question.</summary>
/// <param name="reference">The reference.</param>
/// <param name="drawn">The bags.</param>
internal sealed class ReferenceSamples(Formula reference, Bags drawn)
{
    private readonly Dictionary<Ingredient, Bag> bags = reference.Lines.Select(line => line.Ingredient).Distinct().ToDictionary(ingredient => ingredient, drawn.Of);

    private readonly Dictionary<Balance, double[]> levels = new(ReferenceEqualityComparer.Instance);

    private readonly Dictionary<Hold, (double[] Lowest, double[] Highest)> ends = new(ReferenceEqualityComparer.Instance);

    /// <summary>The reference.</summary>
    public Formula Reference => reference;

    /// <summary>Its own reading by kitchen, as <see cref="SampledReading.Of"/>.</summary>
    public double[] Levels(Balance balance) =>
        levels.TryGetValue(balance, out var known)
            ? known
            : levels[balance] = SampledReading.Of(balance, reference, reference, ingredient => bags[ingredient], Bags.Kitchens);

    /// <summary>The lowest and the highest level that still lies in the band of a hold, by kitchen; one figure each where all kitchens have
    /// the same.</summary>
    public (double[] Lowest, double[] Highest) EndsOf(Hold hold) =>
        ends.TryGetValue(hold, out var known) ? known : ends[hold] = WorkedOut(hold);

    /// <summary>The band of a hold by kitchen, as <see cref="Models.Scenario.BandOf"/>: one that hangs on the reference's reading moves with it.</summary>
    public Func<int, Band> BandsOf(Hold hold)
    {
        if (!HangsOnReference(hold))
        {
            return _ => hold.Band;
        }

        // Made once and moved from kitchen to kitchen: thousands of small objects would cost more than what they compute.
        var at = 0;
        var ownLevels = new Lazy<double[]>(() => Levels(hold.Balance));
        Func<Level?> own = () => At(ownLevels.Value, at) is var level && double.IsNaN(level) ? null : new Level(level);
        Draw draw = ingredient => bags[ingredient].In(at);
        return kitchen =>
        {
            at = kitchen;
            return hold.Share is { } share ? share.Of(own()) : hold.Balance.Around(own, reference, draw);
        };
    }

    private (double[] Lowest, double[] Highest) WorkedOut(Hold hold)
    {
        var bandIn = BandsOf(hold);
        var count = IsSame(hold) ? 1 : Bags.Kitchens;
        var (lowest, highest) = (GC.AllocateUninitializedArray<double>(count), GC.AllocateUninitializedArray<double>(count));
        for (var kitchen = 0; kitchen < count; kitchen++)
        {
            var (low, high) = bandIn(kitchen).Ends();
            (lowest[kitchen], highest[kitchen]) = (low.Value, high.Value);
        }

        return (lowest, highest);
    }

    /// <summary>Whether all kitchens have the same band for certain: where the reference has no reading, the facts may still decide.</summary>
    private bool IsSame(Hold hold) => !HangsOnReference(hold) || (Levels(hold.Balance) is [var own] && !double.IsNaN(own));

    private static bool HangsOnReference(Hold hold) => hold.Share is not null || hold.IsAnchored;

    /// <summary>The figure of a kitchen, of one a kitchen or of one for all.</summary>
    internal static double At(double[] levels, int kitchen) => levels.Length == 1 ? levels[0] : levels[kitchen];
}
