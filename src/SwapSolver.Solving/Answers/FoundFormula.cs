using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>What a solve found.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Formula">The formula; null where there is none.</param>
/// <param name="Objective">What the formula counts by the <see cref="Weights"/>; NaN where there is none.</param>
public sealed record FoundFormula(Outcome Outcome, Formula? Formula, double Objective)
{
    /// <summary>What was found without the wish for sureness; null where there is no such wish.</summary>
    public Formula? Plain { get; init; }

    /// <summary>The model that it is the best point of, before its grams were rounded; null where it came in whole steps.</summary>
    public (FormulaModel Model, IReadOnlyList<double> Values)? Point { get; init; }
}
