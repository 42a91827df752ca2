using System.Globalization;
using System.Net;
using System.Text;

namespace SwapSolver.Lines.Text;

/// <summary>Brings the letters of a line to the usual ones: marks of web pages, wide letters, joined letters, signs that nobody sees.</summary>
internal static class LineText
{
    /// <summary>The line in usual letters.</summary>
    public static string Of(string line)
    {
        var text = line.Contains('&', StringComparison.Ordinal) ? WebUtility.HtmlDecode(line) : line;
        if (text.All(char.IsAscii))
        {
            return text;
        }

        var letters = new StringBuilder();
        foreach (var letter in text)
        {
            if (char.GetUnicodeCategory(letter) == UnicodeCategory.Format)
            {
                continue;
            }

            letters.Append(IsOddForm(letter) ? letter.ToString().Normalize(NormalizationForm.FormKC) : letter.ToString());
        }

        return letters.ToString();
    }

    // Joined letters, wide and narrow forms, and units squeezed into one sign; fractions stay as they are.
    private static bool IsOddForm(char letter) => letter is (>= '\uFB00' and <= '\uFB06') or (>= '\uFF01' and <= '\uFF5E') or (>= '\u3300' and <= '\u33FF');
}
