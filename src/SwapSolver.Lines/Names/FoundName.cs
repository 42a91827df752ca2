using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Lines.Names;

/// <summary>What a name means.</summary>
/// <param name="Ingredient">The ingredient; null where that is not sure.</param>
/// <param name="Assumed">What was taken for granted; null where nothing was.</param>
/// <param name="Problem">Why it is not sure; null where it is.</param>
/// <param name="Candidates">What may be meant where it is not sure, best first.</param>
internal sealed record FoundName(Ingredient? Ingredient, string? Assumed, string? Problem, ImmutableArray<Candidate> Candidates);
