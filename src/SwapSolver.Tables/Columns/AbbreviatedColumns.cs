using System.Collections.Immutable;

namespace SwapSolver.Tables.Columns;

/// <summary>The fields of the abbreviated file in their order, as the documentation of USDA National Nutrient Database for
/// Standard Reference, release 28 (2015), lists them under "Abbreviated File" (the list was seen as public readers of the
/// file repeat it, the page itself was not). Each that is kept stands with its name in the plain table.</summary>
internal static class AbbreviatedColumns
{
    public const string FirstWeight = "GmWt_1";

    public const string FirstMeasure = "GmWt_Desc1";

    public const string SecondWeight = "GmWt_2";

    public const string SecondMeasure = "GmWt_Desc2";

    /// <summary>The fields: the USDA's name, and ours where the field is kept; where ours is missing it is read over.</summary>
    public static readonly ImmutableArray<(string Printed, string? Ours)> All =
    [
        ("NDB_No", FoodColumns.Number), ("Shrt_Desc", FoodColumns.Description), ("Water", "water_g"), ("Energ_Kcal", "energy_kcal"),
        ("Protein", "protein_g"), ("Lipid_Tot", "fat_g"), ("Ash", "ash_g"), ("Carbohydrt", "carbohydrate_by_difference_g"),
        ("Fiber_TD", "fibre_g"), ("Sugar_Tot", "sugars_g"), ("Calcium", "calcium_mg"), ("Iron", "iron_mg"), ("Magnesium", null),
        ("Phosphorus", null), ("Potassium", "potassium_mg"), ("Sodium", "sodium_mg"), ("Zinc", null), ("Copper", null),
        ("Manganese", null), ("Selenium", null), ("Vit_C", null), ("Thiamin", null), ("Riboflavin", null), ("Niacin", null),
        ("Panto_acid", null), ("Vit_B6", null), ("Folate_Tot", null), ("Folic_acid", null), ("Food_Folate", null),
        ("Folate_DFE", null), ("Choline_Tot", null), ("Vit_B12", null), ("Vit_A_IU", null), ("Vit_A_RAE", null), ("Retinol", null),
        ("Alpha_Carot", null), ("Beta_Carot", null), ("Beta_Crypt", null), ("Lycopene", null), ("Lut+Zea", null), ("Vit_E", null),
        ("Vit_D_mcg", null), ("Vit_D_IU", null), ("Vit_K", null), ("FA_Sat", "saturated_fat_g"), ("FA_Mono", null), ("FA_Poly", null),
        ("Cholestrl", null), (FirstWeight, FirstWeight), (FirstMeasure, FirstMeasure), (SecondWeight, SecondWeight),
        (SecondMeasure, SecondMeasure), ("Refuse_Pct", null),
    ];
}
