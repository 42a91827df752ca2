namespace SwapSolver.Solving.Models;

/// <summary>What a solve found.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Values">One value a column; empty where there is no point.</param>
/// <param name="Objective">Objective at the point; NaN where there is none.</param>
public sealed record Solution(Outcome Outcome, IReadOnlyList<double> Values, double Objective)
{
    /// <summary>Nodes of the search tree that were solved; 0 where the solver does not say.</summary>
    public int Nodes { get; init; }

    /// <summary>How much better another point could be at most, of the objective [1]; null where there is no point or the solver
    /// does not say.</summary>
    public double? Gap { get; init; }

    /// <summary>Whether there is a point.</summary>
    public bool HasPoint => Outcome is Outcome.Optimal or Outcome.Feasible;

    /// <summary>An end without a point.</summary>
    public static Solution None(Outcome outcome) => new(outcome, [], double.NaN);
}
