using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>A bag that was put on the shelf.</summary>
internal static class AddedScreen
{
    /// <summary>Shows what was taken for granted, and the ingredient as it is known now.</summary>
    public static void Show(Screen screen, AddIngredientResponse response, bool isWritten)
    {
        PantryItemScreen.Show(screen, response.Ingredient);
        if (response.Notes.Count > 0)
        {
            screen.Part("Taken for granted");
        }

        foreach (var note in response.Notes)
        {
            screen.Item(note);
        }

        Cautions.Show(screen, response.Cautions);
        screen.Gap();
        screen.Sentence(isWritten
            ? $"It is in this kitchen's pantry as {IngredientName.Id(response.Ingredient.Name)}."
            : "Nothing was written down: this was a dry run.");
    }
}
