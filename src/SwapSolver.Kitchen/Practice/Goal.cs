using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What a baker's word, as 'softer', means in readings; from <c>data/practice/goals.json</c>.</summary>
/// <param name="Id">The word, as <c>fewer-net-carbs</c>.</param>
/// <param name="Title">The word for a sentence.</param>
/// <param name="Also">Other words for the same.</param>
/// <param name="Aims">The readings that it moves, each with how far; one or more.</param>
/// <param name="Why">Why these, and why so far.</param>
public sealed record Goal(string Id, string Title, ImmutableArray<string> Also, ImmutableArray<Aim> Aims, string Why);
