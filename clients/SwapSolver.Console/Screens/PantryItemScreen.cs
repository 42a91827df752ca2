using Google.Protobuf.Collections;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>One ingredient with every figure.</summary>
internal static class PantryItemScreen
{
    /// <summary>Shows what it is, its figures with their sources, and what to beware of.</summary>
    public static void Show(Screen screen, Ingredient ingredient)
    {
        screen.Heading($"{ingredient.DisplayName} ({IngredientName.Id(ingredient.Name)})");
        Say(screen, "", ingredient.About);
        Say(screen, "Role: ", ingredient.Role);
        Say(screen, "Groups: ", string.Join(", ", ingredient.Groups));
        Say(screen, "These facts are not good for: ", ingredient.NotFor);
        Say(screen, "How they came about: ", ingredient.Made);
        Say(screen, "Number in the USDA Standard Reference: ", ingredient.UsdaFoodNumber);
        Suitability(screen, ingredient);
        FactsTable.Show(screen, ingredient.Facts);
        if (ingredient.UnknownFacts.Count > 0)
        {
            screen.Sentence($"Not known, which is not zero: {string.Join(", ", ingredient.UnknownFacts)}.");
        }

        if (ingredient.HouseholdMeasures.Count > 0)
        {
            screen.Part("Spoons and cups");
            foreach (var measure in ingredient.HouseholdMeasures)
            {
                screen.Item(FormattableString.Invariant($"{measure.Amount:0.##} {measure.Measure}: {measure.Grams:0.##} g ({measure.Source})"));
            }
        }

        UsageLines.Show(screen, ingredient.Usage);
        if (ingredient.Behaviours.Count > 0)
        {
            screen.Part("In the bowl and the oven");
        }

        foreach (var behaviour in ingredient.Behaviours)
        {
            screen.Item($"{behaviour}");
        }

        Cautions.Show(screen, ingredient.Cautions);
    }

    private static void Suitability(Screen screen, Ingredient ingredient)
    {
        screen.Part("Who may eat it");
        screen.Item($"Allergens (US list): {Words(ingredient, ingredient.AllergensUs)}; (EU list): {Words(ingredient, ingredient.AllergensEu)}.");
        if (!ingredient.AllergensKnown)
        {
            screen.Item("Its allergens were never stated: read its packet. Answers leave it out with every allergen.");
        }

        if (ingredient.MayContain.Count > 0)
        {
            screen.Item($"May contain by cross-contact: {IngredientName.List(ingredient.MayContain)}.");
        }

        string[] diets =
        [
            $"vegan: {YesNo(ingredient, ingredient.Vegan)}",
            $"vegetarian: {YesNo(ingredient, ingredient.Vegetarian)}",
            $"free of gluten by nature: {YesNo(ingredient, ingredient.GlutenFree)}",
        ];
        screen.Item(string.Join("; ", diets));
    }

    private static void Say(Screen screen, string lead, string words)
    {
        if (words.Length > 0)
        {
            screen.Sentence(lead + words);
        }
    }

    private static string Words(Ingredient ingredient, RepeatedField<string> allergens) =>
        allergens.Count > 0 ? IngredientName.List(allergens) : ingredient.AllergensKnown ? "none known" : "not stated";

    /// <summary>Where nobody stated the allergens, a no can be a no or nothing that anybody said.</summary>
    private static string YesNo(Ingredient ingredient, bool fact) => fact ? "yes" : ingredient.AllergensKnown ? "no" : "not stated";
}
