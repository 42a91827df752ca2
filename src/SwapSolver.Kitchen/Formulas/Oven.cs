using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>The oven setting.</summary>
/// <param name="Dial">Dial temperature [°C].</param>
/// <param name="Fan">Whether the fan runs.</param>
public sealed record Oven(Celsius Dial, bool Fan);
