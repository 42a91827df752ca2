namespace SwapSolver.Kitchen.Ingredients;

/// <summary>One figure of an ingredient with where it is from.</summary>
/// <param name="Range">The values, in the unit of the fact.</param>
/// <param name="Source">Key of the source of the typical value in <c>data/sources.json</c>.</param>
/// <param name="Mark">How the typical value is known.</param>
/// <param name="RangeSource">Key of the source of low and high; null where it is <paramref name="Source"/>.</param>
public sealed record Figure(Range Range, string Source, Mark Mark, string? RangeSource);
