using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How much a formula bears of an ingredient.</summary>
internal static class UsageLines
{
    /// <summary>Shows the limits.</summary>
    public static void Show(Screen screen, Usage? usage)
    {
        if (usage is null)
        {
            return;
        }

        screen.Part("How much of it");
        if (usage.HasMaximumPercentOfFlour)
        {
            screen.Item($"At most {usage.MaximumPercentOfFlour:0.##} % of all flours.");
        }

        if (usage.HasMaximumPercentOfBatter)
        {
            screen.Item($"At most {usage.MaximumPercentOfBatter:0.##} % of the batter.");
        }

        screen.Item($"At least {usage.SensibleMinimumGrams:0.##} g, in steps of {usage.ScaleStepGrams:0.##} g.");
        if (usage.Source.Length > 0)
        {
            screen.Item($"Source: {usage.Source}");
        }
    }
}
