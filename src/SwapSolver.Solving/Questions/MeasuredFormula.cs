using System.Collections.Immutable;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>What was measured of a formula.</summary>
/// <param name="Readings">One reading a balance that has one.</param>
/// <param name="Cautions">Cautions that go with the formula.</param>
/// <param name="Repair">The smallest repair where a fixed band is missed; else null.</param>
/// <param name="EndedEarly">Whether the time ran out while a repair was sought.</param>
public sealed record MeasuredFormula(
    ImmutableArray<Reading> Readings, ImmutableArray<string> Cautions, Answer? Repair, bool EndedEarly);
