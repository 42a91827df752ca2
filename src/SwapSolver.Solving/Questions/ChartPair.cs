using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Questions;

/// <summary>An ingredient and what may stand in its place.</summary>
/// <param name="From">What goes out.</param>
/// <param name="To">What comes in; null where nothing does.</param>
public sealed record ChartPair(Ingredient From, Ingredient? To);
