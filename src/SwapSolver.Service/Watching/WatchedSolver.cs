using System.Diagnostics;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Watching;

/// <summary>The solver, with its time, nodes and gap counted, and how soon it lets go when it is told to.</summary>
internal sealed class WatchedSolver(ISolver solver, CallMeter meter) : ISolver
{
    /// <inheritdoc/>
    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel) =>
        Watched(model, () => solver.Solve(model, budget, cancel), solution => solution, cancel);

    /// <inheritdoc/>
    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel) =>
        Watched(model, () => solver.SolveLinear(model, budget, cancel), linear => linear.Solution, cancel);

    private T Watched<T>(Model model, Func<T> solve, Func<T, Solution> solutionOf, CancellationToken cancel)
    {
        using var trace = meter.Traces.StartActivity("solve");
        trace?.SetTag("columns", model.Columns.Count).SetTag("rows", model.Rows.Count);
        long toldAt = 0;
        using var told = cancel.Register(() => Interlocked.Exchange(ref toldAt, Stopwatch.GetTimestamp()));
        var began = Stopwatch.GetTimestamp();
        try
        {
            var solved = solve();
            var solution = solutionOf(solved);
            meter.Solved(solution.Outcome.ToString(), Stopwatch.GetElapsedTime(began), solution.Nodes, solution.Gap);
            trace?.SetTag("outcome", solution.Outcome.ToString()).SetTag("nodes", solution.Nodes);
            return solved;
        }
        catch (OperationCanceledException)
        {
            var at = Interlocked.Read(ref toldAt);
            meter.Freed(at == 0 ? TimeSpan.Zero : Stopwatch.GetElapsedTime(at));
            throw;
        }
    }
}
