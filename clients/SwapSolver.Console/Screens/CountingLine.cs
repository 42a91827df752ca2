using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How net carbohydrate and energy are counted; the figures mean little without it.</summary>
internal static class CountingLine
{
    /// <summary>Shows what the service says of it.</summary>
    public static void Show(Screen screen, Nutrition nutrition)
    {
        if (nutrition.NetCarbsConvention.Length > 0)
        {
            screen.Item($"Net carbs: {nutrition.NetCarbsConvention}");
        }

        if (nutrition.EnergyMethod.Length > 0)
        {
            screen.Item($"Energy: {nutrition.EnergyMethod}");
        }
    }
}
