using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What was measured, or how to measure.</summary>
internal static class MeasuredScreen
{
    /// <summary>Shows the figures that were written down; the method where there are none.</summary>
    public static void Show(Screen screen, MeasureIngredientResponse response)
    {
        if (response.Measured.Count == 0)
        {
            screen.Sentence(response.Method);
            return;
        }

        screen.Heading($"{response.Ingredient.DisplayName}, as this kitchen knows it");
        FactsTable.Show(screen, response.Measured);
    }
}
