namespace SwapSolver.Kitchen.Quantities;

/// <summary>The height of one balance's reading, in that balance's unit.</summary>
/// <param name="Value">The value; never NaN.</param>
public readonly record struct Level(double Value);
