using SwapSolver.OrTools;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Tests.Running;

/// <summary>A solver that behaves as it is told: slow, out of time, or broken.</summary>
public sealed class StandInSolver : ISolver
{
    private readonly OrToolsSolver real = new();

    /// <summary>What it does; the real solver until it is told otherwise.</summary>
    public Func<Solution, CancellationToken, Solution>? Instead { get; set; }

    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        var instead = Instead;
        var solution = real.Solve(model, budget, CancellationToken.None);
        return instead is null ? solution : instead(solution, cancel);
    }

    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel) => real.SolveLinear(model, budget, cancel);
}
