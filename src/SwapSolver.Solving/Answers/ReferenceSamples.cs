using System.Collections.Concurrent;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>What a reference reads and where its bands end, by kitchen, and its default bands by typical facts: worked out once, for all answers to a question and for all
/// questions that are asked of the same loaf.</summary>
/// <param name="reference">The reference.</param>
/// <param name="drawn">The bags.</param>
/// <param name="kitchens">How many kitchens are looked at.</param>
internal sealed class ReferenceSamples(Formula reference, Bags drawn, int kitchens = Bags.Kitchens)
{
    // By object: the kitchen's own rules are few, and what differs from question to question, what is left out and how much of a line there is, is not kept.
    private readonly ConcurrentDictionary<Balance, double[]> levels = new(ReferenceEqualityComparer.Instance);

    private readonly ConcurrentDictionary<Balance, (Level Low, Level High)> spreads = new(ReferenceEqualityComparer.Instance);

    private readonly ConcurrentDictionary<Balance, SampledEnds> anchored = new(ReferenceEqualityComparer.Instance);

    private DefaultHolds? defaults;

    /// <summary>The default bands about it, as <see cref="HoldList.Defaults"/>.</summary>
    /// <param name="balances">The rules.</param>
    public ImmutableArray<Hold> Defaults(BalanceList balances)
    {
        if (defaults is not { } known || !ReferenceEquals(known.Of, balances))
        {
            defaults = known = new DefaultHolds(balances, HoldList.Defaults(balances, reference));
        }

        return known.Holds;
    }

    /// <summary>Its own reading by kitchen, as <see cref="SampledReading.Of"/>.</summary>
    public double[] Levels(Balance balance) => Kept(levels, balance, Read);

    /// <summary>The 5th and the 95th percentile of its own reading, as <paramref name="work"/> finds them.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Func<double[], (Level Low, Level High)> work) =>
        Kept(spreads, balance, one => work(Levels(one)));

    /// <summary>The lowest and the highest level that still lies in the band of a hold, by kitchen; one figure each where all kitchens have
    /// the same.</summary>
    public SampledEnds EndsOf(Hold hold) =>
        hold is { IsAnchored: true, Share: null } ? Kept(anchored, hold.Balance, _ => WorkedOut(hold)) : WorkedOut(hold);

    private static T Kept<T>(ConcurrentDictionary<Balance, T> all, Balance balance, Func<Balance, T> work) =>
        balance is LeftOut or LineMass ? work(balance) : all.GetOrAdd(balance, work);

    private double[] Read(Balance balance) => SampledReading.Of(balance, reference, reference, drawn.Of, kitchens);

    /// <summary>Whether all that hangs on a reference is the same of another formula: what is in the bowl, and what comes out of it.</summary>
    /// <param name="other">The other formula.</param>
    public bool IsOf(Formula other) =>
        ReferenceEquals(reference, other)
        || (reference.Slices == other.Slices
            && reference.BakeLoss == other.BakeLoss
            && Equals(reference.Shape, other.Shape)
            && reference.Lines.Length == other.Lines.Length
            && reference.Lines.Zip(other.Lines).All(static lines => IsSame(lines.First, lines.Second)));

    // By object, as bags are: what a kitchen measured anew is another ingredient.
    private static bool IsSame(Line line, Line other) =>
        ReferenceEquals(line.Ingredient, other.Ingredient) && line.Grams.Equals(other.Grams) && line.Size == other.Size;

    /// <summary>The band of a hold by kitchen, as <see cref="Models.Scenario.BandOf"/>: one that hangs on the reference's reading moves with it.</summary>
    public Func<int, Band> BandsOf(Hold hold)
    {
        if (!HangsOnReference(hold))
        {
            return _ => hold.Band;
        }

        var ownLevels = new Lazy<double[]>(() => Levels(hold.Balance));
        if (hold.Share is { } share)
        {
            return kitchen => share.Of(OwnIn(kitchen));
        }

        // Made once and moved from kitchen to kitchen: thousands of small objects would cost more than what they compute.
        var at = 0;
        Func<Level?> own = () => OwnIn(at);
        var bags = reference.Lines.Select(line => line.Ingredient).Distinct().ToDictionary(ingredient => ingredient, drawn.Of);
        Draw draw = ingredient => bags[ingredient].In(at);
        return kitchen =>
        {
            at = kitchen;
            return hold.Balance.Around(own, reference, draw);
        };

        Level? OwnIn(int kitchen) => At(ownLevels.Value, kitchen) is var level && double.IsNaN(level) ? null : new Level(level);
    }

    private SampledEnds WorkedOut(Hold hold)
    {
        var bandIn = BandsOf(hold);
        var count = IsSame(hold) ? 1 : kitchens;
        var (lowest, highest) = (GC.AllocateUninitializedArray<double>(count), GC.AllocateUninitializedArray<double>(count));
        for (var kitchen = 0; kitchen < count; kitchen++)
        {
            var (low, high) = bandIn(kitchen).Ends();
            (lowest[kitchen], highest[kitchen]) = (low.Value, high.Value);
        }

        return new SampledEnds(lowest, highest);
    }

    /// <summary>Whether all kitchens have the same band for certain: where the reference has no reading, the facts may still decide.</summary>
    private bool IsSame(Hold hold) => !HangsOnReference(hold) || (Levels(hold.Balance) is [var own] && !double.IsNaN(own));

    private static bool HangsOnReference(Hold hold) => hold.Share is not null || hold.IsAnchored;

    /// <summary>The figure of a kitchen, of one a kitchen or of one for all.</summary>
    internal static double At(double[] levels, int kitchen) => levels.Length == 1 ? levels[0] : levels[kitchen];

    private sealed record DefaultHolds(BalanceList Of, ImmutableArray<Hold> Holds);
}
