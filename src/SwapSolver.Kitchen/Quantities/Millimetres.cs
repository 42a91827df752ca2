namespace SwapSolver.Kitchen.Quantities;

/// <summary>A length [mm].</summary>
/// <param name="Value">Millimetres, above 0.</param>
public readonly record struct Millimetres(double Value);
