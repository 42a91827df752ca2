namespace SwapSolver.Kitchen.Quantities;

/// <summary>A mass with what it may be [g].</summary>
/// <param name="Low">Low end [g]; not above <paramref name="Typical"/>.</param>
/// <param name="Typical">The mass that is used where one is needed [g].</param>
/// <param name="High">High end [g]; not below <paramref name="Typical"/>.</param>
public readonly record struct GramRange(Grams Low, Grams Typical, Grams High)
{
    /// <summary>Both together, low with low and high with high [g].</summary>
    public static GramRange operator +(GramRange left, GramRange right) =>
        new(left.Low + right.Low, left.Typical + right.Typical, left.High + right.High);

    /// <summary>What is left of one without the other, nothing at least at the low end [g].</summary>
    public static GramRange operator -(GramRange left, GramRange right)
    {
        var low = left.Low - right.High;
        return new(low < Grams.None ? Grams.None : low, left.Typical - right.Typical, left.High - right.Low);
    }

    /// <summary>So many of it [g].</summary>
    public static GramRange operator *(GramRange each, Amount amount) =>
        new(each.Low * amount.Low, each.Typical * amount.Middle, each.High * amount.High);

    /// <summary>The mass at a share of the way from low to high, the typical one standing at one half [g].</summary>
    /// <param name="share">0 to 1, both included.</param>
    public Grams At(double share) => share < 0.5
        ? Low + ((Typical - Low) * (2 * share))
        : Typical + ((High - Typical) * ((2 * share) - 1));

    /// <summary>The same with its ends drawn out to hold another mass [g].</summary>
    public GramRange Holding(Grams other) =>
        new(other < Low ? other : Low, Typical, other > High ? other : High);
}
