using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace SwapSolver.Lines.Names;

/// <summary>Brings words to one form, so that case, accents, plurals and spellings do not matter.</summary>
/// <param name="sameWords">Spellings, each with the word that it stands for.</param>
internal sealed class WordForm(ImmutableDictionary<string, string> sameWords)
{
    private const int LongestMatched = 40;

    // Letter by letter, since the platform takes accents off only with its tables of languages, which the service leaves out.
    private const string Accented = "àáâãäåçèéêëìíîïñòóôõöøùúûüýÿ";

    private const string Unaccented = "aaaaaaceeeeiiiinoooooouuuuyy";

    /// <summary>The words of a name, each in its one form.</summary>
    public ImmutableArray<string> Words(string name) =>
        Join(name.Split([' ', '-', '/', ','], StringSplitOptions.RemoveEmptyEntries).Select(Of));

    /// <summary>The same words with a 'free' joined to what a thing is free of: gluten-free is one word, and so is salt-free.</summary>
    public static ImmutableArray<string> Join(IEnumerable<string> words)
    {
        var joined = ImmutableArray.CreateBuilder<string>();
        foreach (var word in words)
        {
            switch (word)
            {
                case "free" when joined.Count > 0 && joined[^1] is not ("and" or "or"):
                    joined[^1] += "-free";
                    break;
                case "range" when joined.Count > 0 && joined[^1].EndsWith("-free", StringComparison.Ordinal):
                    // Large free-range eggs are not free of large ones.
                    joined[^1] = joined[^1][..^"-free".Length];
                    joined.AddRange("free", "range");
                    break;
                default:
                    joined.Add(word);
                    break;
            }
        }

        return joined.ToImmutable();
    }

    /// <summary>The one form of a word.</summary>
    public string Of(string word)
    {
        var lower = (word.Length > LongestMatched ? word[..LongestMatched] : word).ToLowerInvariant().Replace('’', '\'');
        if (sameWords.TryGetValue(lower, out var said))
        {
            lower = said;
        }

        var plain = Singular(WithoutAccents(lower));
        return sameWords.TryGetValue(plain, out var same) ? same : plain;
    }

    private static string WithoutAccents(string word)
    {
        if (word.All(char.IsAscii))
        {
            return word;
        }

        var letters = new StringBuilder();
        foreach (var letter in word.Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark))
        {
            letters.Append(Accented.IndexOf(letter, StringComparison.Ordinal) is var place and >= 0 ? Unaccented[place] : letter);
        }

        return letters.ToString();
    }

    private static string Singular(string word)
    {
        if (word.EndsWith("'s", StringComparison.Ordinal))
        {
            return word[..^2];
        }

        word = word.Trim('\'');
        return word.Length < 4 || word.EndsWith("ss", StringComparison.Ordinal) || word.EndsWith("us", StringComparison.Ordinal) || !word.EndsWith('s')
            ? word
            : word.EndsWith("ies", StringComparison.Ordinal) && word.Length > 5 ? $"{word[..^3]}y" : word[..^1];
    }
}
