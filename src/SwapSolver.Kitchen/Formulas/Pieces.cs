namespace SwapSolver.Kitchen.Formulas;

/// <summary>Several small pieces.</summary>
/// <param name="Count">How many, 1 or more.</param>
public sealed record Pieces(int Count) : Shape;
