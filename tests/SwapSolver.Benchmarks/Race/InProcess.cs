using System.Diagnostics;
using SwapSolver.OrTools;
using SwapSolver.Solving.Models;

namespace SwapSolver.Benchmarks.Race;

/// <summary>A backend within this process, as the service calls it; the time holds the translation of the model too.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Solver">The solver.</param>
public sealed record InProcess(string Name, ISolver Solver) : IRunner
{
    /// <summary>What the service solves with.</summary>
    public static InProcess Ours { get; } = new("ours", new OrToolsSolver());

    /// <inheritdoc/>
    public Finish Run(FixedQuestion question, string file)
    {
        var clock = Stopwatch.StartNew();
        Solution solution;
        try
        {
            solution = Solver.Solve(question.Model, TimeSpan.FromSeconds(IRunner.MostSeconds), CancellationToken.None);
        }
        catch (InvalidOperationException fault) when (this != Ours)
        {
            // A point that breaks its own model is no proof.
            System.Console.Error.WriteLine($"{Name}: {fault.Message}");
            return new Finish(IRunner.MostSeconds * 1000, IsProven: false, double.NaN);
        }

        return new Finish(clock.Elapsed.TotalMilliseconds, solution.Outcome is Outcome.Optimal or Outcome.Infeasible, solution.Objective);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }
}
