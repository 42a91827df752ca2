using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>The limits of a reading, ends included. A side that is null is open.</summary>
/// <param name="Low">Lowest level that is inside.</param>
/// <param name="High">Highest level that is inside.</param>
public readonly record struct Band(Level? Low, Level? High)
{
    /// <summary>No limit on either side.</summary>
    public static readonly Band Open = new(null, null);

    /// <summary>Nothing at all is let in.</summary>
    public static readonly Band Nothing = new(new Level(0), new Level(0));

    /// <summary>Whether both sides are open.</summary>
    public bool IsOpen => Low is null && High is null;

    /// <summary>Where a level stands against the band.</summary>
    /// <param name="level">The level.</param>
    /// <param name="tolerance">How far beyond an end, relative to it, still counts as on it.</param>
    public Standing Of(Level level, double tolerance = 1e-6)
    {
        var (lowest, highest) = Ends(tolerance);
        return level.Value < lowest ? Standing.Below : level.Value > highest ? Standing.Above : Standing.Inside;
    }

    /// <summary>The lowest and the highest value that still count as inside, in the unit of the levels; infinite on a side that is open.</summary>
    /// <param name="tolerance">How far beyond an end, relative to it, still counts as on it.</param>
    public (double Lowest, double Highest) Ends(double tolerance = 1e-6) => (
        Low is { } low ? low.Value - (tolerance * Math.Max(Math.Abs(low.Value), tolerance)) : double.NegativeInfinity,
        High is { } high ? high.Value + (tolerance * Math.Max(Math.Abs(high.Value), tolerance)) : double.PositiveInfinity);

    /// <summary>The band that keeps both this and another.</summary>
    public Band And(Band other) => new(
        Low is { } low && other.Low is { } otherLow ? new Level(Math.Max(low.Value, otherLow.Value)) : Low ?? other.Low,
        High is { } high && other.High is { } otherHigh ? new Level(Math.Min(high.Value, otherHigh.Value)) : High ?? other.High);
}
