namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>What a program says of a model.</summary>
/// <param name="IsFeasible">Whether there is a point.</param>
/// <param name="Objective">The proven least objective; NaN where there is no point.</param>
public sealed record Verdict(bool IsFeasible, double Objective)
{
    /// <summary>No point keeps every row.</summary>
    public static readonly Verdict Infeasible = new(false, double.NaN);

    /// <summary>The point that it found, one value a column; empty where there is none.</summary>
    public IReadOnlyList<double> Values { get; init; } = [];

    /// <summary>How far another's verdict lies from this one, relative to the larger or to 1; endless where one has a point
    /// and the other none.</summary>
    public double Apart(Verdict other) =>
        IsFeasible != other.IsFeasible ? double.PositiveInfinity
        : !IsFeasible ? 0
        : Math.Abs(Objective - other.Objective) / Math.Max(1, Math.Max(Math.Abs(Objective), Math.Abs(other.Objective)));
}
