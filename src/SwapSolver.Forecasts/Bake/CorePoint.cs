using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The core of a loaf at one minute.</summary>
/// <param name="At">Time since the loaf went into the oven [min].</param>
/// <param name="Stage">Where the loaf is.</param>
/// <param name="Core">The coldest of its middle in the oven, the warmest on the rack [°C].</param>
public sealed record CorePoint(Minutes At, BakeStage Stage, Celsius Core);
