using System.Text;

namespace SwapSolver.Console.Screens;

/// <summary>Text from elsewhere, made safe to print.</summary>
internal static class CleanText
{
    /// <summary>The text on one line, without control characters: a name must not steer the terminal.</summary>
    public static string Of(string text)
    {
        if (!text.Any(char.IsControl))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var letter in text.ReplaceLineEndings(" "))
        {
            clean.Append(letter == '\t' ? ' ' : char.IsControl(letter) ? '?' : letter);
        }

        return clean.ToString();
    }
}
