using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What one piece of a counted ingredient weighs without its shell.</summary>
/// <param name="Size">The size of the egg that it is of.</param>
/// <param name="Grams">Edible mass of one [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record CountedUnit(EggSize Size, Grams Grams, string Source, Mark Mark);
