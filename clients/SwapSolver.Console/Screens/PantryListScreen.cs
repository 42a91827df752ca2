using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The ingredients of the pantry, a line each.</summary>
internal static class PantryListScreen
{
    /// <summary>Shows the list and how long it is.</summary>
    public static void Show(Screen screen, ListIngredientsResponse response)
    {
        if (response.Ingredients.Count == 0)
        {
            screen.Sentence("No ingredient has this role.");
            return;
        }

        if (screen.IsNarrow)
        {
            Sentences(screen, response.Ingredients);
        }
        else
        {
            screen.Table(Table(response.Ingredients));
        }

        screen.Gap();
        screen.Sentence($"{response.Ingredients.Count} {(response.Ingredients.Count == 1 ? "ingredient" : "ingredients")}. More of one: swapsolver pantry show ID");
    }

    private static void Sentences(Screen screen, IEnumerable<Ingredient> ingredients)
    {
        foreach (var ingredient in ingredients)
        {
            screen.Item($"{IngredientName.Id(ingredient.Name)}: {ingredient.DisplayName}; {ingredient.Role}; allergens: {Allergens(ingredient)}");
        }
    }

    private static PlainTable Table(IEnumerable<Ingredient> ingredients)
    {
        var table = new PlainTable().Words("id").Words("name").Words("role").Words("allergens");
        foreach (var ingredient in ingredients)
        {
            table.Row(IngredientName.Id(ingredient.Name), ingredient.DisplayName, ingredient.Role, Allergens(ingredient));
        }

        return table;
    }

    private static string Allergens(Ingredient ingredient)
    {
        var named = ingredient.AllergensUs.Union(ingredient.AllergensEu).ToList();
        return (named.Count, ingredient.AllergensKnown) switch
        {
            (0, true) => "none known",
            (0, false) => "not stated",
            (_, false) => $"{IngredientName.List(named)}; others not stated",
            _ => IngredientName.List(named),
        };
    }
}
