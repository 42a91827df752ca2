namespace SwapSolver.Solving.Models;

/// <summary>One unknown of a model.</summary>
/// <param name="Name">Plain name, unique within the model; letters, digits and underscores.</param>
/// <param name="Low">Least value.</param>
/// <param name="High">Greatest value; may be infinite.</param>
/// <param name="IsWhole">Whether it takes whole values only.</param>
/// <param name="Cost">What one unit adds to the objective, which is minimised.</param>
public sealed record Column(string Name, double Low, double High, bool IsWhole, double Cost);
