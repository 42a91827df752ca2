using System.Globalization;

namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>What a program says of a model.</summary>
/// <param name="IsFeasible">Whether there is a point.</param>
/// <param name="Objective">The proven least objective; NaN where there is no point.</param>
public sealed record Verdict(bool IsFeasible, double Objective)
{
    /// <summary>No point keeps every row.</summary>
    public static readonly Verdict Infeasible = new(false, double.NaN);

    /// <summary>The proven best objective, as the program printed it.</summary>
    public static Verdict Optimal(string printed) =>
        new(true, double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture));
}
