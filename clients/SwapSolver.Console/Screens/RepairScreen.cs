using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The least that would bring every reading back into its band.</summary>
internal static class RepairScreen
{
    /// <summary>Shows what to change and the whole bowl after it.</summary>
    public static void Show(Screen screen, Answer repair)
    {
        screen.Heading("The repair");
        ChangesTable.Show(screen, repair.Changes);
        BowlTable.Show(screen, repair.Formula);
        Confidence.Show(screen, repair);
        Cautions.Show(screen, repair.Cautions);
    }
}
