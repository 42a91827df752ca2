namespace SwapSolver.Kitchen.Quantities;

/// <summary>A temperature [°C].</summary>
/// <param name="Value">Degrees Celsius.</param>
public readonly record struct Celsius(double Value);
