using System.Globalization;
using System.Net;
using System.Text;

namespace SwapSolver.Lines.Text;

/// <summary>Brings the letters of a line to the usual ones: marks of web pages, wide letters, joined letters, signs that nobody sees.</summary>
internal static class LineText
{
    /// <summary>The wide exclamation mark, first of the wide forms of the plain letters.</summary>
    private const char WideFrom = '\uFF01';

    private const char WideTo = '\uFF5E';

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

            letters.Append(Usual(letter));
        }

        return letters.ToString();
    }

    // The platform's own compatibility forms need its tables of languages, which the service leaves out.
    private static string Usual(char letter) => letter switch
    {
        >= WideFrom and <= WideTo => ((char)(letter - WideFrom + '!')).ToString(),
        '\uFB00' => "ff",
        '\uFB01' => "fi",
        '\uFB02' => "fl",
        '\uFB03' => "ffi",
        '\uFB04' => "ffl",
        '㎎' => "mg",
        '㎏' => "kg",
        '㎖' => "ml",
        '㎗' => "dl",
        '㏄' => "cc",
        _ => letter.ToString(),
    };
}
