namespace SwapSolver.Solving.Models;

/// <summary>Solves models. A call blocks its thread until it is done, out of time or cancelled.</summary>
public interface ISolver
{
    /// <summary>Solves a model.</summary>
    /// <param name="model">The model; guarded by the solver's room before any native call.</param>
    /// <param name="budget">Most time to take.</param>
    /// <param name="cancel">Stops the solve.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    Solution Solve(Model model, TimeSpan budget, CancellationToken cancel);
}

/// <summary>How a solve ended.</summary>
public enum Outcome
{
    /// <summary>The best point was found and proven best.</summary>
    Optimal,

    /// <summary>Time ran out; a point was found that keeps every row, not proven best.</summary>
    Feasible,

    /// <summary>Proven: no point keeps every row.</summary>
    Infeasible,

    /// <summary>Time ran out before any point was found.</summary>
    OutOfTime,
}

/// <summary>What a solve found.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Values">One value a column; empty where there is no point.</param>
/// <param name="Objective">Objective at the point; NaN where there is none.</param>
public sealed record Solution(Outcome Outcome, IReadOnlyList<double> Values, double Objective)
{
    /// <summary>Whether there is a point.</summary>
    public bool HasPoint => Outcome is Outcome.Optimal or Outcome.Feasible;

    /// <summary>An end without a point.</summary>
    public static Solution None(Outcome outcome) => new(outcome, [], double.NaN);
}
