using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The allergens that speak against what a food says of itself. Other things speak against it too, as gelatine
/// does; these are those that nobody can argue with.</summary>
public static class SuitsAndAllergens
{
    /// <summary>Id of wheat, an allergen of the US list.</summary>
    public const string Wheat = "wheat";

    /// <summary>Id of cereals with gluten, an allergen of the EU list.</summary>
    public const string GlutenCereals = "gluten-cereals";

    /// <summary>What no vegan eats.</summary>
    public static readonly ImmutableArray<string> AgainstVegan = ["milk", "egg", "fish", "crustaceans", "molluscs"];

    /// <summary>What no vegetarian eats.</summary>
    public static readonly ImmutableArray<string> AgainstVegetarian = ["fish", "crustaceans", "molluscs"];

    /// <summary>What is never free of gluten.</summary>
    public static readonly ImmutableArray<string> AgainstGlutenFree = [Wheat, GlutenCereals];
}
