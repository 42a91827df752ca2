using System.Collections.Frozen;
using System.Text;

namespace SwapSolver.Cards.Texts;

/// <summary>Writes words into Markdown so that they are read as words: CommonMark lets any ASCII punctuation be escaped
/// by a backslash.</summary>
internal static class MarkdownWords
{
    private static readonly FrozenSet<char> Signs = @"\`*_{}[]<>#|~&$".ToFrozenSet();

    /// <summary>The words, their signs escaped.</summary>
    public static string Of(string text)
    {
        var written = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (Signs.Contains(letter))
            {
                written.Append('\\');
            }

            written.Append(letter);
        }

        // What would begin a list or a rule at the start of a line.
        return written.Length > 0 && written[0] is '-' or '+' or '=' ? $"\\{written}" : written.ToString();
    }
}
