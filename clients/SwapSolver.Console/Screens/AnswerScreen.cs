using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>One answer in full.</summary>
internal static class AnswerScreen
{
    /// <summary>Shows an answer below its heading.</summary>
    /// <param name="screen">Where it is shown.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="heading">Its heading.</param>
    /// <param name="cautions">The cautions to show with it; those that all answers share stand below the last.</param>
    public static void Show(Screen screen, Answer answer, string heading, IReadOnlyCollection<string> cautions)
    {
        screen.Heading(heading);
        ChangesTable.Show(screen, answer.Changes);
        BowlTable.Show(screen, answer.Formula);
        ReadingBars.Show(screen, [.. answer.Readings.Where(ReadingBars.TellsSomething)]);
        Confidence.Show(screen, answer);
        SliceLine.Show(screen, answer.Nutrition);
        AllergenLines.Show(screen, answer.Allergens);
        Cautions.Show(screen, cautions);
    }
}
