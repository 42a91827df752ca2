using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The model of an answer, as any solver reads it.</summary>
internal static class ModelText
{
    /// <summary>Shows the model of the first answer and nothing else, where it was asked for. The result is whether it was.</summary>
    public static bool Show(Screen screen, IReadOnlyList<Answer> answers)
    {
        if (answers.Count == 0 || answers[0].ModelMps.Length == 0)
        {
            return false;
        }

        screen.Verbatim(answers[0].ModelMps);
        return true;
    }
}
