using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What a spoon or cup of an ingredient weighs.</summary>
/// <param name="Amount">How many of the measure.</param>
/// <param name="Measure">The measure in the source's words.</param>
/// <param name="Grams">Mass of so many [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
/// <param name="Estimate">What so many may weigh, level and loose [g], where the mass is an estimate; null where the way of
/// filling decides.</param>
public sealed record HouseholdMeasure(
    decimal Amount, string Measure, Grams Grams, string Source, Mark Mark, GramRange? Estimate = null);
