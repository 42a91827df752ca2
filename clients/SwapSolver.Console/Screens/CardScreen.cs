using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>A card, as it was printed.</summary>
internal static class CardScreen
{
    /// <summary>The printed card; empty where none was asked for.</summary>
    public static string Text(PrintCardResponse response) =>
        response.HasMarkdown ? response.Markdown
        : response.HasHtml ? response.Html
        : response.HasJsonld ? response.Jsonld
        : response.HasCsv ? response.Csv
        : response.HasSvg ? response.Svg
        : string.Empty;

    /// <summary>Shows the card, or says where it was written.</summary>
    public static void Show(Screen screen, PrintCardResponse response, string? file)
    {
        if (file is null)
        {
            screen.Verbatim(Text(response).TrimEnd('\n') + "\n");
            return;
        }

        screen.Sentence($"The card is in {file} ({response.LabelLaw.Place}: {response.LabelLaw.Text}).");
    }
}
