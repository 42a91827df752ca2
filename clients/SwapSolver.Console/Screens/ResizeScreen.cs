using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The formula in its new size.</summary>
internal static class ResizeScreen
{
    /// <summary>Shows how much larger the loaf is, then the answers.</summary>
    public static void Show(Screen screen, ResizeFormulaResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        if (response.Factor > 0)
        {
            screen.Sentence($"The batter is {response.Factor:0.##} times the formula's; 'before' below is the formula at that size.");
        }

        AnswersScreen.Show(screen, response.Answers, response.Conflict, response.Nearest);
    }
}
