using System.Collections.Immutable;

namespace SwapSolver.Solving.Answers;

/// <summary>The wishes that fight each other.</summary>
/// <param name="Wishes">The wishes.</param>
/// <param name="EndedEarly">Whether the time ran out before the set was proven smallest.</param>
public sealed record FoundConflict(ImmutableArray<Conflict> Wishes, bool EndedEarly);
