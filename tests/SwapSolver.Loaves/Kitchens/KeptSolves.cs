using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>Lets another solve, and keeps what it was given and what it found.</summary>
/// <param name="solver">The one that solves.</param>
public sealed class KeptSolves(ISolver solver) : ISolver
{
    /// <summary>The models and what was found, in order.</summary>
    public List<(Model Model, Solution Solution)> Solves { get; } = [];

    /// <inheritdoc/>
    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        var solution = solver.Solve(model, budget, cancel);
        Solves.Add((model, solution));
        return solution;
    }

    /// <inheritdoc/>
    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel) => solver.SolveLinear(model, budget, cancel);
}
