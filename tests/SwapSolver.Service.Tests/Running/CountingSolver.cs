using SwapSolver.OrTools;
using SwapSolver.Service.Networking;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Tests.Running;

/// <summary>The solver of the service, with a count of how often a question asked it: what the service's health asks every few seconds is no question.</summary>
public sealed class CountingSolver : ISolver
{
    private readonly OrToolsSolver solver = new();

    private int solves;

    public int Solves => Volatile.Read(ref solves);

    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        if (!ReferenceEquals(model, Readiness.Smallest))
        {
            Interlocked.Increment(ref solves);
        }

        return solver.Solve(model, budget, cancel);
    }

    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel) => solver.SolveLinear(model, budget, cancel);
}
