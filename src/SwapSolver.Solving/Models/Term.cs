namespace SwapSolver.Solving.Models;

/// <summary>A term of a row.</summary>
/// <param name="Column">Index of the column.</param>
/// <param name="Coefficient">What one unit of it adds.</param>
public readonly record struct Term(int Column, double Coefficient);
