namespace SwapSolver.Kitchen.Quantities;

/// <summary>A height above the sea [m].</summary>
/// <param name="Value">Metres; below 0 for a kitchen below the sea.</param>
public readonly record struct Metres(double Value);
