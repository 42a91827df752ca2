namespace SwapSolver.Records.Formulas;

/// <summary>What became of a change, and where the formula stands now.</summary>
/// <param name="Outcome">What became of it.</param>
/// <param name="Now">Where the formula stands; null where there is none.</param>
public sealed record Changed(Outcome Outcome, FormulaHead? Now)
{
    /// <summary>Its newest revision, where the change was done.</summary>
    public Revision? Newest { get; init; }
}
