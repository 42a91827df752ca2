namespace SwapSolver.Kitchen.Quantities;

/// <summary>A span of time [min].</summary>
/// <param name="Value">Minutes, 0 or more.</param>
public readonly record struct Minutes(double Value);
