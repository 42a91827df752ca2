using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Where a formula stands.</summary>
internal static class BalanceScreen
{
    /// <summary>Shows bowl, readings, nutrition, allergens and cautions, and the repair where one is needed.</summary>
    public static void Show(Screen screen, BalanceFormulaResponse response)
    {
        var name = response.Formula.DisplayName;
        screen.Heading(name.Length > 0 ? name : "The formula");
        BowlTable.Show(screen, response.Formula, response.BakersPercentages);
        LinesRead.Show(screen, response.LinesRead);
        ReadingBars.Show(screen, response.Readings, key: response.LinesRead.Count > 0 ? ReadingBar.KeyWithMeasures : ReadingBar.Key);
        NutritionTable.Show(screen, response.Nutrition);
        AllergenLines.Show(screen, response.Allergens);
        Cautions.Show(screen, [.. response.Cautions.Except(response.Repair?.Cautions ?? [])]);
        if (response.Repair is { } repair)
        {
            RepairScreen.Show(screen, repair);
        }
    }
}
