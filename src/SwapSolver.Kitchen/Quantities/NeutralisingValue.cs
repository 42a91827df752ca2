namespace SwapSolver.Kitchen.Quantities;

/// <summary>Grams of sodium bicarbonate that a hundred grams of an acid use up [g/100 g].</summary>
/// <param name="Value">0 or more; cream of tartar is near 45, citric acid near 131.</param>
public readonly record struct NeutralisingValue(double Value);
