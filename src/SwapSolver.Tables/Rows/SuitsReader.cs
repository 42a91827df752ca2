using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads who can eat the food of a row.</summary>
internal static class SuitsReader
{
    /// <summary>Who can eat it; null where nothing was said. The result is false where the fields cannot be true; the
    /// problems are then added.</summary>
    /// <param name="row">The row.</param>
    /// <param name="allergens">The allergens that it states.</param>
    /// <param name="like">The ingredient that it behaves like, which speaks where the row does not.</param>
    /// <param name="suits">Who can eat it.</param>
    public static bool TryRead(TableRow row, StatedAllergens? allergens, Ingredient? like, out Suits? suits)
    {
        suits = null;
        if (!YesOrNo.TryRead(row, FoodColumns.Vegan, out var vegan)
            | !YesOrNo.TryRead(row, FoodColumns.Vegetarian, out var vegetarian)
            | !YesOrNo.TryRead(row, FoodColumns.GlutenFree, out var glutenFree))
        {
            return false;
        }

        if (vegan is true && vegetarian is false)
        {
            row.Refuse(FoodColumns.Vegan, "is said of a food that is not vegetarian", "correct one of the two");
            return false;
        }

        if (IsDenied(row, FoodColumns.Vegan, vegan, SuitsAndAllergens.AgainstVegan, allergens)
            | IsDenied(row, FoodColumns.Vegetarian, vegetarian, SuitsAndAllergens.AgainstVegetarian, allergens)
            | IsDenied(row, FoodColumns.GlutenFree, glutenFree, SuitsAndAllergens.AgainstGlutenFree, allergens))
        {
            return false;
        }

        if (vegan is not null || vegetarian is not null || glutenFree is not null)
        {
            // What nobody says is not taken to be so; what is vegan is vegetarian.
            suits = new Suits(
                vegan ?? (vegetarian is not false && like is { Suits.Vegan: true }),
                vegetarian ?? (vegan is true || like is { Suits.Vegetarian: true }),
                glutenFree ?? like is { Suits.GlutenFree: true });
        }

        return true;
    }

    private static bool IsDenied(TableRow row, string column, bool? said, ImmutableArray<string> against, StatedAllergens? allergens)
    {
        if (said is not true || allergens is null || against.FirstOrDefault(id => allergens.Contains.Contains(id)) is not { } carried)
        {
            return false;
        }

        row.Refuse(column, $"is said of a food that contains {carried}", "correct one of the two");
        return true;
    }
}
