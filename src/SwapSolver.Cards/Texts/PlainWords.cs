using System.Globalization;
using System.Text;

namespace SwapSolver.Cards.Texts;

/// <summary>Makes words that somebody typed harmless to a page: nothing in them moves what stands around them.</summary>
internal static class PlainWords
{
    /// <summary>The same words on one line, without control signs and without the marks that turn the direction of what follows.
    /// Letters of any script stay.</summary>
    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            if (category is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            {
                plain.Append(' ');
            }
            else if (category != UnicodeCategory.Format || rune.Value is 0x200C or 0x200D)
            {
                // The two joiners belong to letters; every other sign of format is invisible and turns or hides text.
                plain.Append(rune);
            }
        }

        return plain.ToString().Trim();
    }
}
