using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>A table of swaps for readers, as it was printed.</summary>
internal static class SwapTableScreen
{
    /// <summary>The printed table.</summary>
    public static string Text(PrintSwapTableResponse response) => response.HasHtml ? response.Html : response.Markdown;

    /// <summary>Shows the table, or says where it was written.</summary>
    public static void Show(Screen screen, PrintSwapTableResponse response, string? file)
    {
        if (file is null)
        {
            screen.Verbatim(Text(response).TrimEnd('\n') + "\n");
            return;
        }

        screen.Sentence($"The table of {response.Swaps.Count} swaps is in {file}; {response.Judged} of {response.Pairs} pairs were judged.");
    }
}
