using SwapSolver.OrTools;
using SwapSolver.Solving.Models;

namespace SwapSolver.Benchmarks;

/// <summary>Solves, and keeps the models that it was given, so that the same work can be run without what is around it.</summary>
public sealed class RecordingSolver : ISolver
{
    private readonly OrToolsSolver solver = new();

    /// <summary>The models, in order.</summary>
    public List<Model> Models { get; } = [];

    /// <inheritdoc/>
    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        Models.Add(model);
        return solver.Solve(model, budget, cancel);
    }

    /// <inheritdoc/>
    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel) => solver.SolveLinear(model, budget, cancel);
}
