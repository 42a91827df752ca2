using System.Globalization;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Ingredients;

public sealed class HouseholdWeightTests
{
    private static readonly ReferenceTable Weights =
        ReferenceTable.Read("Ingredients/Reference/usda-sr-household-weights.csv");

    /// <summary>Ids whose food number has household weights in the table.</summary>
    public static TheoryData<string> Weighed =>
    [
        .. ShippedPantry.Pantry.Ingredients
            .Where(ingredient => Weights.Rows.Any(weight => weight["ndb_no"] == ingredient.UsdaFoodNumber))
            .Select(ingredient => ingredient.Id),
    ];

    [Theory]
    [MemberData(nameof(Weighed))]
    public void Spoons_and_cups_of_an_ingredient_weigh_what_the_table_says(string id)
    {
        var ingredient = TestKitchen.Ingredient(id);
        var ours = ingredient.HouseholdMeasures
            .Select(measure => (measure.Amount, measure.Measure, (decimal)measure.Grams.Value))
            .ToHashSet();

        Assert.All(
            Weights.Rows.Where(row => row["ndb_no"] == ingredient.UsdaFoodNumber),
            row =>
            {
                var found = ours.FirstOrDefault(measure => measure.Amount == Decimal(row["amount"]) && measure.Measure == row["measure"] && measure.Item3 == Decimal(row["grams"]));
                Assert.True(found.Measure is not null, $"{id} lacks '{row.Text}' of {row.Name} ({row.Source})");
                ReferenceLedger.Note(row, id, (double)Decimal(row["grams"]), (double)found.Item3, 0);
            });
    }

    private static decimal Decimal(string cell) => decimal.Parse(cell, CultureInfo.InvariantCulture);
}
