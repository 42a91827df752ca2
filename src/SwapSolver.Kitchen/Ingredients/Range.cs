namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What a figure may be, in the unit of its fact: brands, harvests and kitchens differ.</summary>
/// <param name="Low">Low end; not above <paramref name="Typical"/>.</param>
/// <param name="Typical">The value that is used where one value is needed.</param>
/// <param name="High">High end; not below <paramref name="Typical"/>.</param>
public readonly record struct Range(double Low, double Typical, double High)
{
    /// <summary>Exactly nothing.</summary>
    public static readonly Range Zero = new(0, 0, 0);

    /// <summary>Whether the three stand in order and are finite.</summary>
    public bool IsInOrder => double.IsFinite(Low) && double.IsFinite(High) && Low <= Typical && Typical <= High;

    /// <summary>The value at a share of the way from low to high, the typical value standing at one half.</summary>
    /// <param name="share">0 to 1, both included.</param>
    public double At(double share) => share < 0.5
        ? Low + ((Typical - Low) * 2 * share)
        : Typical + ((High - Typical) * ((2 * share) - 1));
}
