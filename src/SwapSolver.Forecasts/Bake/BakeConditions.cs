using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a formula is baked.</summary>
/// <param name="Altitude">Height of the kitchen above the sea [m], -500 to 6,000.</param>
/// <param name="Core">Core temperature that is asked for [°C]; null where the usual one will do.</param>
/// <param name="IsColdStart">Whether the loaf goes into a cold oven.</param>
/// <param name="Known">A known bake of this kitchen, at the same height; null where there is none.</param>
public sealed record BakeConditions(Metres Altitude, Celsius? Core = null, bool IsColdStart = false, KnownBake? Known = null);
