using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>A bake of this kitchen that is known.</summary>
/// <param name="Formula">What was baked, with its shape and oven.</param>
/// <param name="Baked">How long it took [min], above 0.</param>
/// <param name="Core">To which core temperature [°C], below the local boiling point.</param>
public sealed record KnownBake(Formula Formula, Minutes Baked, Celsius Core);
