namespace SwapSolver.Solving.Models;

/// <summary>What a solve of a linear program found.</summary>
/// <param name="Solution">The point.</param>
/// <param name="Duals">What a unit of each row's limit costs [objective a unit of the row]; empty where there is no optimal point.</param>
public sealed record LinearSolution(Solution Solution, IReadOnlyList<double> Duals);
