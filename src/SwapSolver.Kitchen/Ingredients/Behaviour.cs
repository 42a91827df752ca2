namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What an ingredient does in the bowl or the oven.</summary>
/// <param name="Kind">Id of the kind, as <c>greens-with-alkali</c>.</param>
/// <param name="Note">One plain sentence for a baker.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record Behaviour(string Kind, string Note, string Source, Mark Mark);

/// <summary>What a spoon or cup of an ingredient weighs.</summary>
/// <param name="Amount">How many of the measure.</param>
/// <param name="Measure">The measure in the source's words.</param>
/// <param name="Grams">Mass of so many [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record HouseholdMeasure(decimal Amount, string Measure, Quantities.Grams Grams, string Source, Mark Mark);
