using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>The limits of a reading, ends included. A side that is null is open.</summary>
/// <param name="Low">Lowest level that is inside.</param>
/// <param name="High">Highest level that is inside.</param>
public readonly record struct Band(Level? Low, Level? High)
{
    /// <summary>How far beyond an end, relative to it, still counts as on it [1].</summary>
    private const double Tolerance = 1e-6;

    /// <summary>No limit on either side.</summary>
    public static readonly Band Open = new(null, null);

    /// <summary>Nothing at all is let in.</summary>
    public static readonly Band Nothing = new(new Level(0), new Level(0));

    /// <summary>Whether both sides are open.</summary>
    public bool IsOpen => Low is null && High is null;

    /// <summary>Where a level stands against the band.</summary>
    /// <param name="level">The level.</param>
    /// <param name="tolerance">How far beyond an end, relative to it, still counts as on it.</param>
    public Standing Of(Level level, double tolerance = Tolerance)
    {
        var (lowest, highest) = Ends(tolerance);
        return level.Value < lowest.Value ? Standing.Below : level.Value > highest.Value ? Standing.Above : Standing.Inside;
    }

    /// <summary>The lowest and the highest level that still count as inside; infinite on a side that is open.</summary>
    public (Level Lowest, Level Highest) Ends() => Ends(Tolerance);

    private (Level Lowest, Level Highest) Ends(double tolerance) => (
        new Level(Low is { } low ? low.Value - (tolerance * Math.Max(Math.Abs(low.Value), tolerance)) : double.NegativeInfinity),
        new Level(High is { } high ? high.Value + (tolerance * Math.Max(Math.Abs(high.Value), tolerance)) : double.PositiveInfinity));

    /// <summary>The band that keeps both this and another.</summary>
    public Band And(Band other) => new(
        Low is { } low && other.Low is { } otherLow ? new Level(Math.Max(low.Value, otherLow.Value)) : Low ?? other.Low,
        High is { } high && other.High is { } otherHigh ? new Level(Math.Min(high.Value, otherHigh.Value)) : High ?? other.High);
}
