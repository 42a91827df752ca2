using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Names;

namespace SwapSolver.Lines;

/// <summary>What one part of a line says.</summary>
/// <param name="Ingredient">The ingredient; null where that is not sure.</param>
/// <param name="Grams">Its mass [g]; null where that cannot be said.</param>
/// <param name="Egg">The size of egg that it was counted in; null where it was not.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="Candidates">What may be meant where the ingredient is not sure, best first.</param>
/// <param name="Problem">Why the part did not become grams of an ingredient; null where it did.</param>
public sealed record LineReading(
    Ingredient? Ingredient,
    GramRange? Grams,
    EggSize? Egg,
    ImmutableArray<string> Assumed,
    ImmutableArray<Candidate> Candidates,
    string? Problem)
{
    internal static LineReading Refused(string problem) => new(null, null, null, [], [], problem);
}
