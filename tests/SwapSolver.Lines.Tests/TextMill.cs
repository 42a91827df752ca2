using System.Text;

namespace SwapSolver.Lines.Tests;

/// <summary>Makes texts that no cook would write, the same ones on every machine.</summary>
/// <param name="seed">Which run of texts.</param>
/// <param name="lines">Lines to spoil.</param>
internal sealed class TextMill(int seed, IReadOnlyList<string> lines)
{
    private static readonly string[] Sprinkles =
    [
        "½", "1/0", "9999999999999999999999", "(", ")", "((((", "+", "plus", "and a half", ",", "or", "/", "-", "×", "x", "\ud83c", "\0", "°C", "40C", "%", "à", "eggs", "cup", "L", "1,000", "1.000",
        "0", " ", "\t", "﷽", "e\u0301\u0301", "&#x110000;", "&amp;", "&frac12;", "....", "minus", "a", "of", "one", "(1)", "for", "free", "gluten", "\u00ad", "１", "ﬀ", "each",
    ];

    private static readonly string[] Repeated =
    [
        "1", "1/", "(", "((1", "a ", "one and a ", "1 cup + ", "1 or ", "½", "&#", ".", "..", "- ", "between 1 and ", "salt ", "flour or ", "x", "of a ", "40C ",
    ];

    private readonly Random random = new(seed);

    /// <summary>Lines as long as they may be, of one piece over and over: whatever repeats is where a grammar would run away.</summary>
    public static IEnumerable<string> Longest => Repeated.Select(piece => string.Concat(Enumerable.Repeat(piece, IngredientLines.MostLetters / piece.Length)));

    /// <summary>A string of any bytes, read as UTF-8 or one letter a byte.</summary>
    public string Bytes()
    {
        var bytes = new byte[random.Next(0, 320)];
        random.NextBytes(bytes);
        return (random.Next(2) == 0 ? Encoding.UTF8 : Encoding.Latin1).GetString(bytes);
    }

    /// <summary>A line cut, joined with another, sprinkled with odd signs, repeated.</summary>
    public string Mutated()
    {
        var (line, other) = (One(lines), One(lines));
        var text = new StringBuilder(line[..random.Next(line.Length + 1)]);
        for (var sprinkles = random.Next(5); sprinkles > 0; sprinkles--)
        {
            text.Insert(random.Next(text.Length + 1), random.Next(3) == 0 ? ((char)random.Next(char.MaxValue + 1)).ToString() : One(Sprinkles));
        }

        text.Append(other[random.Next(other.Length + 1)..]);
        return string.Concat(Enumerable.Repeat($"{text} ", random.Next(1, 5)));
    }

    private string One(IReadOnlyList<string> texts) => texts[random.Next(texts.Count)];
}
