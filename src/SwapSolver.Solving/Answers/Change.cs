using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>One line that differs from the reference.</summary>
/// <param name="Ingredient">What it is of.</param>
/// <param name="Before">Grams in the reference as the caller gave it.</param>
/// <param name="After">Grams in the answer.</param>
/// <param name="BeforeCount">Count before; null where it was weighed.</param>
/// <param name="AfterCount">Count after; null where it is weighed.</param>
/// <param name="Reason">Why, in plain words.</param>
public sealed record Change(
    Ingredient Ingredient, Grams Before, Grams After, double? BeforeCount, double? AfterCount, string Reason);
