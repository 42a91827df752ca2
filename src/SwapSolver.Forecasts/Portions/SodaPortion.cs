using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>The bicarbonate that one line of a formula brings.</summary>
/// <param name="Base">What is known of it.</param>
/// <param name="Millimoles">How much [mmol].</param>
internal sealed record SodaPortion(Bicarbonate Base, double Millimoles)
{
    /// <summary>Share of its carbon dioxide that heat alone frees [1].</summary>
    public double FreedByHeat => Base.FreedByHeatPercent.Range.Typical / 100;

    /// <summary>Whether something of it is left in a crumb where acid lacks: baker's ammonia leaves whole.</summary>
    public bool StaysInCrumb => FreedByHeat < 1;
}
