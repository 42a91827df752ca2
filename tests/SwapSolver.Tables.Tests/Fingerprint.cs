using System.Globalization;
using SwapSolver.Kitchen.Foods;

namespace SwapSolver.Tables.Tests;

/// <summary>Everything that a food states, as a text that can be compared.</summary>
internal static class Fingerprint
{
    public static string Of(StatedFood food) => string.Create(
        CultureInfo.InvariantCulture,
        $"{food.Id} {food.Name} {food.UsdaFoodNumber} {food.Like} {food.Role} {food.Suits} {string.Join(',', food.Allergens?.Contains ?? ["?"])} {string.Join(',', food.Allergens?.MayContain ?? ["?"])} {string.Join(',', food.Figures.OrderBy(pair => pair.Key.Index))} {string.Join(',', food.HouseholdMeasures)}");
}
