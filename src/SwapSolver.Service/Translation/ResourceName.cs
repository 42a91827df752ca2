namespace SwapSolver.Service.Translation;

/// <summary>Resource names: a collection and an id.</summary>
internal static class ResourceName
{
    private const string Ingredients = "ingredients/";

    /// <summary>The id of an ingredient's name; a bare id is one too.</summary>
    public static string IngredientId(string name) =>
        name.StartsWith(Ingredients, StringComparison.Ordinal) ? name[Ingredients.Length..] : name;

    /// <summary>The name of an ingredient.</summary>
    public static string Of(Kitchen.Ingredients.Ingredient ingredient) => Ingredients + ingredient.Id;
}
