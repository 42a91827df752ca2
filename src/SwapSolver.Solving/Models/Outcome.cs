namespace SwapSolver.Solving.Models;

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
