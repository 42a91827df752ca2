using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>One weighed thing of a formula.</summary>
/// <param name="Ingredient">What is weighed.</param>
/// <param name="Grams">How much [g], 0 or more.</param>
/// <param name="Size">The egg size by which it is counted; null where it is weighed.</param>
public sealed record Line(Ingredient Ingredient, Grams Grams, EggSize? Size = null)
{
    /// <summary>How many there are; null where the line is weighed.</summary>
    public double? Count => Size is { } size && UnitOf(Ingredient, size) is { } unit ? Grams / unit : null;

    /// <summary>What one of a counted ingredient weighs [g]; null where it is not counted by that size.</summary>
    public static Grams? UnitOf(Ingredient ingredient, EggSize size)
    {
        foreach (var unit in ingredient.CountedUnits)
        {
            if (unit.Size == size)
            {
                return unit.Grams;
            }
        }

        return null;
    }
}
