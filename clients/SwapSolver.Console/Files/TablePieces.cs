namespace SwapSolver.Console.Files;

/// <summary>A piece of a table: whole rows.</summary>
/// <param name="FirstLine">Number of its first line in the table, from 1.</param>
/// <param name="Text">Its text.</param>
internal sealed record TablePiece(int FirstLine, string Text);

/// <summary>Cuts a table into pieces that the service takes at once.</summary>
internal static class TablePieces
{
    /// <summary>Most letters of a piece; a row is shorter.</summary>
    public const int MostLetters = 200_000;

    /// <summary>The pieces. A row may go on over line ends within quotes, so a cut comes only where quotes are closed; where
    /// they never are, at the last line end that fits.</summary>
    public static IEnumerable<TablePiece> Of(string text)
    {
        var quote = QuoteOf(text);
        var (start, firstLine) = (0, 1);
        while (start < text.Length)
        {
            var end = text.Length - start <= MostLetters ? text.Length : EndOf(text, start, quote);
            var piece = text[start..end];
            yield return new TablePiece(firstLine, piece);
            firstLine += piece.Count(letter => letter == '\n');
            start = end;
        }
    }

    /// <summary>The line that names the columns: the first that is neither blank nor a comment.</summary>
    public static string HeaderOf(string text)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.Trim() is { Length: > 0 } said && said[0] != '#')
            {
                return line.ToString();
            }
        }

        return string.Empty;
    }

    /// <summary>The USDA's file quotes with tildes and writes inches as a quote.</summary>
    private static char QuoteOf(string text) => HeaderOf(text).StartsWith('~') ? '~' : '"';

    private static int EndOf(string text, int start, char quote)
    {
        var (closed, any) = (0, 0);
        var isOpen = false;
        for (var place = start; place < start + MostLetters; place++)
        {
            if (text[place] == quote)
            {
                isOpen = !isOpen;
            }
            else if (text[place] == '\n')
            {
                any = place + 1;
                closed = isOpen ? closed : any;
            }
        }

        return closed > 0 ? closed : any > 0 ? any : start + MostLetters;
    }
}
