using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>One answer in full.</summary>
internal static class AnswerScreen
{
    /// <summary>Shows an answer below its heading.</summary>
    public static void Show(Screen screen, Answer answer, string heading)
    {
        screen.Heading(heading);
        ChangesTable.Show(screen, answer.Changes);
        BowlTable.Show(screen, answer.Formula);
        ReadingBars.Show(screen, answer.Readings);
        Confidence.Show(screen, answer);
        SliceLine.Show(screen, answer.Nutrition);
        AllergenLines.Show(screen, answer.Allergens);
        Cautions.Show(screen, answer.Cautions);
    }
}
