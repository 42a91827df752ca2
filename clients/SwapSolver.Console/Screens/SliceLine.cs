using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What is in one slice, in a sentence.</summary>
internal static class SliceLine
{
    /// <summary>Shows the figures and how the net carbohydrate in them is counted.</summary>
    public static void Show(Screen screen, Nutrition? nutrition)
    {
        if (nutrition?.PerSlice is not { } slice)
        {
            return;
        }

        screen.Part($"A slice of {slice.MassG:0} g");
        string[] figures =
        [
            $"net carbs {slice.NetCarbsG:0.0} g",
            $"{slice.EnergyKcal:0} kcal",
            $"fat {slice.FatG:0.0} g",
            $"protein {slice.ProteinG:0.0} g",
            $"fibre {slice.FibreG:0.0} g",
            $"sodium {slice.SodiumMg:0} mg",
        ];
        screen.Item(string.Join("; ", figures));
        CountingLine.Show(screen, nutrition);
    }
}
