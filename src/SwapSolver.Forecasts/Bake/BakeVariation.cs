using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>What one thing done otherwise does to the time of a bake.</summary>
/// <param name="What">What is done otherwise, as "oven at 190 °C".</param>
/// <param name="Ratio">Time to the core target then by the time as it stands [%], as the figures leave it open.</param>
public sealed record BakeVariation(string What, PercentRange Ratio);
