using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a changed loaf bakes beside the one it came from, in the same kitchen.</summary>
/// <param name="Before">Time of the loaf it came from [min].</param>
/// <param name="Ratio">Time of the changed loaf by that [%]; better known than either time.</param>
/// <param name="After">The changed loaf.</param>
public sealed record BakeChange(MinuteRange Before, PercentRange Ratio, BakeForecast After);
