using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>Our pantry against the table that it was copied from, cell by cell.</summary>
public sealed class UsdaCompositionTests
{
    private const string Soda = "baking-soda";

    private static readonly ReferenceTable Foods = ReferenceTable.Read("Ingredients/Reference/usda-sr-baking-foods.csv");

    private static readonly ReferenceTable Energies = ReferenceTable.Read("Ingredients/Reference/specific-atwater-factors.csv");

    private static readonly IReadOnlyList<(string Column, Fact Fact)> Columns =
    [
        ("water_g", Fact.Water), ("energy_kcal", Fact.Energy), ("protein_g", Fact.Protein), ("fat_g", Fact.Fat),
        ("saturated_fat_g", Fact.SaturatedFat), ("ash_g", Fact.Ash), ("carbohydrate_by_difference_g", Fact.Carbohydrate),
        ("fibre_g", Fact.Fibre), ("sugars_g", Fact.Sugars), ("calcium_mg", Fact.Calcium), ("iron_mg", Fact.Iron),
        ("potassium_mg", Fact.Potassium), ("sodium_mg", Fact.Sodium),
    ];

    /// <summary>Ids with a food number whose row our copy of the table has.</summary>
    public static TheoryData<string> Tabled =>
        [.. ShippedPantry.Pantry.Ingredients.Where(ingredient => ingredient.UsdaFoodNumber is { } number && Row(number) is not null).Select(ingredient => ingredient.Id)];

    public static TheoryData<string> Factors => [.. Energies.Names];

    [Theory]
    [MemberData(nameof(Tabled))]
    public void An_ingredient_reads_as_its_row_to_the_printed_digit(string id)
    {
        var ingredient = TestKitchen.Ingredient(id);
        var row = Row(ingredient.UsdaFoodNumber!)!;
        Assert.All(Columns, column =>
        {
            var printed = row[column.Column];
            if (printed.Length > 0 && !(id == Soda && column.Fact == Fact.Ash))
            {
                var ours = (decimal)ingredient.RangeOf(column.Fact)!.Value.Typical;
                ReferenceLedger.Note(row, $"{id}, {column.Column}", (double)decimal.Parse(printed, CultureInfo.InvariantCulture), (double)ours, 0);
                Assert.True(
                    ours == decimal.Parse(printed, CultureInfo.InvariantCulture),
                    $"{id}, {column.Column}: {ours} against {printed} of {row.Name} ({row.Source})");
            }
        });
    }

    [Fact]
    public void What_the_table_calls_the_ash_of_soda_is_what_soda_loses_on_ignition()
    {
        // 2 NaHCO3 -> Na2CO3 + H2O + CO2: of 168.012 g stay 105.988 g, 63.08 %, and 36.92 % go. The table prints 36.90
        // as ash, so ours is the rest of 100, to the digit that ours is written in.
        var printed = Row("18372")!.Number("ash_g");

        Assert.Equal(36.92, printed, 0.05);
        Assert.Equal(100 - printed, TestKitchen.Ingredient(Soda).RangeOf(Fact.Ash)!.Value.Typical, 0.05);
    }

    [Fact]
    public void Only_these_foods_have_a_number_whose_row_we_could_not_see() => Assert.Equal(
        ["buckwheat-flour", "sesame-flour", "tofu-silken", "watermelon-seed-flour"],
        ShippedPantry.Pantry.Ingredients
            .Where(ingredient => ingredient.UsdaFoodNumber is { } number && Row(number) is null)
            .Select(ingredient => ingredient.Id)
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Factors))]
    public void Energy_is_what_protein_fat_and_carbohydrate_give_by_their_own_factors(string name)
    {
        var row = Energies[name];
        var ingredient = TestKitchen.Ingredient(row["ingredient"]);
        double Part(string column, Fact fact) => row.Number(column) * ingredient.RangeOf(fact)!.Value.Typical;
        var summed = Part("protein", Fact.Protein) + Part("fat", Fact.Fat) + Part("carbohydrate", Fact.Carbohydrate);
        var ours = ingredient.RangeOf(Fact.Energy)!.Value.Typical;

        Assert.Equal(row["usda"], ingredient.UsdaFoodNumber);
        Assert.True(row.Agrees(summed), row.Against(summed));
        Assert.True(row.Agrees(ours), row.Against(ours));
    }

    private static ReferenceRow? Row(string number) => Foods.Rows.SingleOrDefault(row => row["ndb_no"] == number);
}
