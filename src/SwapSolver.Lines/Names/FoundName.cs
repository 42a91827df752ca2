using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Lines.Names;

/// <summary>What a name means.</summary>
/// <param name="Ingredient">The ingredient; null where that is not sure.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="Problem">Why it is not sure; null where it is.</param>
/// <param name="Candidates">What may be meant where it is not sure, best first.</param>
/// <param name="Form">The form that it is measured in where the line says none; empty where the name says nothing.</param>
internal sealed record FoundName(Ingredient? Ingredient, ImmutableArray<string> Assumed, string? Problem, ImmutableArray<Candidate> Candidates, ImmutableArray<string> Form);
