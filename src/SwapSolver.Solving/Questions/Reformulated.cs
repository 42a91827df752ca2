using System.Collections.Immutable;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>What came of a reformulation.</summary>
/// <param name="Outcomes">The formulas, or what stands in the way.</param>
/// <param name="Before">The readings that were to move, of the formula as it was, against where they were wanted.</param>
public sealed record Reformulated(Outcomes Outcomes, ImmutableArray<Reading> Before);
