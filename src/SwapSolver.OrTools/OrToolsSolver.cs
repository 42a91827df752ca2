using Google.OrTools.LinearSolver;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools;

/// <summary>Solves models with a backend of OR-Tools. One native solver a call, disposed at its end.</summary>
/// <param name="backend">The backend.</param>
public sealed class OrToolsSolver(Backend backend = Backend.Cbc) : ISolver
{
    /// <inheritdoc/>
    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        model.Guard();
        using var solver = Solver.CreateSolver(NameOf(backend))
            ?? throw new InvalidOperationException($"the package has no backend {backend}");
        var variables = ModelTranslation.Write(model, solver);
        solver.SetTimeLimit(Math.Max(1, (long)budget.TotalMilliseconds));
        // Solving stops early only by proof: the answer that is printed is the best one, not one within a gap.
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 1e-7);
        using var stop = cancel.Register(static state => ((Solver)state!).InterruptSolve(), solver);
        var status = solver.Solve(parameters);
        cancel.ThrowIfCancellationRequested();
        var outcome = StatusTranslation.Read(status);
        if (outcome is not (Outcome.Optimal or Outcome.Feasible))
        {
            return Solution.None(outcome);
        }

        double[] values = [.. variables.Select(variable => variable.SolutionValue())];
        GC.KeepAlive(solver);
        return StatusTranslation.Checked(model, outcome, values);
    }

    private static string NameOf(Backend backend) => backend switch
    {
        Backend.Scip => "SCIP",
        Backend.Cbc => "CBC",
        Backend.Highs => "HIGHS",
        _ => throw new ArgumentOutOfRangeException(nameof(backend), backend, "no such backend"),
    };
}
