using SwapSolver.Console.Arguments;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What was saved.</summary>
internal static class SavedScreen
{
    /// <summary>Says under which name, as which revision, and with which etag.</summary>
    public static void Show(Screen screen, Formula formula)
    {
        screen.Sentence($"Saved {formula.DisplayName} as {formula.Name}, revision {formula.Revision}; etag {formula.Etag}.");
        screen.Sentence($"Ask about it by its name, as: swapsolver balance {formula.Name}. All its revisions: swapsolver formula history {FormulaName.Id(formula.Name)}");
    }
}
