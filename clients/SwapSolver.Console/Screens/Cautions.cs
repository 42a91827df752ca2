namespace SwapSolver.Console.Screens;

/// <summary>Cautions, each on a line of its own and with the word in front.</summary>
internal static class Cautions
{
    /// <summary>Shows the cautions.</summary>
    public static void Show(Screen screen, params IReadOnlyCollection<string> cautions)
    {
        if (cautions.Count > 0)
        {
            screen.Gap();
        }

        foreach (var caution in cautions)
        {
            screen.Warning($"Caution: {caution}");
        }
    }
}
