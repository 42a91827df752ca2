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

        var claims = new SuitsClaims(vegan, vegetarian, glutenFree);
        if (claims.Contradict)
        {
            row.Refuse(FoodColumns.Vegan, "is said of a food that is not vegetarian", "correct one of the two");
            return false;
        }

        var denied = claims.Denied(allergens);
        if (IsDenied(row, FoodColumns.Vegan, denied.Vegan)
            | IsDenied(row, FoodColumns.Vegetarian, denied.Vegetarian)
            | IsDenied(row, FoodColumns.GlutenFree, denied.GlutenFree))
        {
            return false;
        }

        suits = claims.After(like);
        return true;
    }

    private static bool IsDenied(TableRow row, string column, string? carried)
    {
        if (carried is not null)
        {
            row.Refuse(column, $"is said of a food that contains {carried}", "correct one of the two");
        }

        return carried is not null;
    }
}
