namespace SwapSolver.Solving.Models;

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
