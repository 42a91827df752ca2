using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Tables.Tests;

/// <summary>The reader over the shipped data, and the table of the USDA that it is held against.</summary>
internal static class TestTables
{
    public const string Header = "ndb_no,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,sugars_g,calcium_mg,iron_mg,magnesium_mg,phosphorus_mg,potassium_mg,sodium_mg,saturated_fat_g,monounsaturated_fat_g,polyunsaturated_fat_g,cholesterol_mg";

    /// <summary>Kept columns of the plain table by their names in its documented header.</summary>
    public static readonly IReadOnlyList<(string Column, Fact Fact)> Kept =
    [
        ("water_g", Fact.Water), ("energy_kcal", Fact.Energy), ("protein_g", Fact.Protein), ("fat_g", Fact.Fat), ("ash_g", Fact.Ash),
        ("carbohydrate_by_difference_g", Fact.Carbohydrate), ("fibre_g", Fact.Fibre), ("sugars_g", Fact.Sugars),
        ("calcium_mg", Fact.Calcium), ("iron_mg", Fact.Iron), ("potassium_mg", Fact.Potassium), ("sodium_mg", Fact.Sodium),
        ("saturated_fat_g", Fact.SaturatedFat),
    ];

    /// <summary>Foods of which the table prints no alcohol, acid or gas, so that its figures do not make 100 g.</summary>
    public static readonly IReadOnlyList<string> NotWhole = ["02048", "02050", "02053", "18372"];

    private static readonly SourceKeys Sources = SourceKeys.Read(TestKitchen.Folder);

    public static ReferenceTable Usda { get; } = ReferenceTable.Read("Reference/usda-sr-baking-foods.csv");

    public static ReferenceTable Weights { get; } = ReferenceTable.Read("Reference/usda-sr-household-weights.csv");

    public static FoodRules Foods { get; } = FoodRulesFile.Read(TestKitchen.Folder, Sources);

    public static FoodTable Reader { get; } = new(Foods, TableRulesFile.Read(TestKitchen.Folder, Sources), TestKitchen.Bakehouse.Pantry);

    public static FoodIngredient Ingredients { get; } =
        new(Foods, TestKitchen.Bakehouse.Pantry.Allergens, new FoodWords(TestKitchen.Bakehouse.Phrases));

    /// <summary>The file as it lies on the disk, comments and all.</summary>
    public static string FileOf(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", name));

    public static TableReading Read(params string[] lines) => Reader.Read(new TableSlice(string.Join('\n', lines)));

    /// <summary>The ingredient of a food, as the service makes it.</summary>
    public static Ingredient IngredientOf(StatedFood food) =>
        Ingredients.Of(food, Shipped(food.Like), Shipped(Foods.Kinds.LikeOf(food.Name)));

    private static Ingredient? Shipped(string? id) => id is null ? null : TestKitchen.Ingredient(id);
}
