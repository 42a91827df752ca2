using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Tables.Columns;

/// <summary>The columns of a plain table of foods.</summary>
internal static class FoodColumns
{
    public const string Number = "ndb_no";

    public const string Description = "long_description";

    public const string Id = "id";

    public const string Like = "like";

    public const string Role = "role";

    public const string Contains = "contains";

    public const string MayContain = "may_contain";

    public const string Vegan = "vegan";

    public const string Vegetarian = "vegetarian";

    public const string GlutenFree = "gluten_free";

    /// <summary>The columns that state a figure that is kept.</summary>
    public static readonly ImmutableArray<Column> Figures =
    [
        new("water_g", Fact.Water, IsRequired: true),
        new("energy_kcal", Fact.Energy, IsRequired: true),
        new("protein_g", Fact.Protein, IsRequired: true),
        new("fat_g", Fact.Fat, IsRequired: true),
        new("ash_g", Fact.Ash),
        new("carbohydrate_by_difference_g", Fact.Carbohydrate, IsRequired: true),
        new("fibre_g", Fact.Fibre),
        new("sugars_g", Fact.Sugars),
        new("calcium_mg", Fact.Calcium),
        new("iron_mg", Fact.Iron),
        new("potassium_mg", Fact.Potassium),
        new("sodium_mg", Fact.Sodium),
        new("saturated_fat_g", Fact.SaturatedFat),
        new("starch_g", Fact.Starch),
        new("polyols_g", Fact.Polyols),
        new("erythritol_g", Fact.Erythritol),
        new("allulose_g", Fact.Allulose),
        new("alcohol_g", Fact.Alcohol),
        new("other_g", Fact.Other),
    ];

    /// <summary>All columns: those that name, those that state a figure, and nutrients that are read over.</summary>
    public static readonly ImmutableArray<Column> All =
    [
        new(Number), new(Description, IsRequired: true), .. Figures,
        new("magnesium_mg"), new("phosphorus_mg"), new("monounsaturated_fat_g"), new("polyunsaturated_fat_g"), new("cholesterol_mg"),
        new(Id), new(Like), new(Role), new(Contains), new(MayContain), new(Vegan), new(Vegetarian), new(GlutenFree),
    ];

    /// <summary>The column of a fact.</summary>
    public static string Of(Fact fact) => Figures.First(column => column.Fact == fact).Name;
}
