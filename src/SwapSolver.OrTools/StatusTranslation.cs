using Google.OrTools.LinearSolver;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools;

/// <summary>Reads how a native solve ended, and believes no point that it has not checked.</summary>
internal static class StatusTranslation
{
    /// <summary>What the package returns, outside its own list, where HiGHS reached its time limit with nothing found.</summary>
    private const Solver.ResultStatus HighsAtItsLimit = (Solver.ResultStatus)99;

    /// <summary>The outcome of a status. Our models are bounded, so 'unbounded' is a fault like any other.</summary>
    public static Outcome Read(Solver.ResultStatus status) => status switch
    {
        Solver.ResultStatus.OPTIMAL => Outcome.Optimal,
        Solver.ResultStatus.FEASIBLE => Outcome.Feasible,
        Solver.ResultStatus.INFEASIBLE => Outcome.Infeasible,
        Solver.ResultStatus.NOT_SOLVED => Outcome.OutOfTime,
        HighsAtItsLimit => Outcome.OutOfTime,
        _ => throw new InvalidOperationException($"the solver ended with status {status}"),
    };

    /// <summary>The solution, if its point keeps every row of the model in our own arithmetic.</summary>
    public static Solution Checked(Model model, Outcome outcome, double[] values) =>
        model.Broken(values) is { } broken
            ? throw new InvalidOperationException($"the solver's point breaks '{broken}'")
            : new Solution(outcome, values, model.Objective(values));
}
