using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The verdict on a proposed swap.</summary>
internal static class CheckScreen
{
    /// <summary>Shows the verdict and its reasons, the readings, the repair, and words for a reader.</summary>
    public static void Show(Screen screen, CheckSwapResponse response)
    {
        screen.Heading(Sentence(response));
        foreach (var reason in response.Reasons)
        {
            screen.Sentence(reason);
        }

        LinesRead.Show(screen, response.LinesRead);
        ConflictLines.Show(screen, response.Conflict);
        ReadingBars.Show(screen, [.. response.Readings.Where(ReadingBars.TellsSomething)], "Readings with the swap as proposed");
        if (response.Repair is { } repair)
        {
            RepairScreen.Show(screen, repair);
        }

        if (response.Reply.Length > 0)
        {
            screen.Part("To send to the reader");
            screen.Sentence(response.Reply);
        }

        Cautions.Show(screen, [.. response.Cautions.Except(response.Repair?.Cautions ?? [])]);
    }

    private static string Sentence(CheckSwapResponse response) => response.Verdict switch
    {
        CheckSwapResponse.Types.Verdict.Balances => "Yes. It balances as proposed.",
        CheckSwapResponse.Types.Verdict.BalancesWithRepair => "Yes, if other lines are corrected as below.",
        CheckSwapResponse.Types.Verdict.DoesNotBalance when response.Repair is not null =>
            "No. It does not balance as proposed; what would work instead stands below.",
        CheckSwapResponse.Types.Verdict.DoesNotBalance => "No. It does not balance.",
        _ => "The service gave no verdict.",
    };
}
