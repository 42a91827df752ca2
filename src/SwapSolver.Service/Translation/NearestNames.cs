using Quickenshtein;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the known names that are nearest to one that is not known.</summary>
internal static class NearestNames
{
    private const int Count = 3;

    private const int MostLetters = 100;

    /// <summary>The nearest names, nearest first. Words count before letters do: 'almonds ground' is nearer
    /// to 'almond-meal' than to 'salmon'.</summary>
    public static IReadOnlyList<string> To(string name, IEnumerable<string> known)
    {
        var wanted = (name.Length > MostLetters ? name[..MostLetters] : name).ToLowerInvariant();
        var words = WordsOf(wanted);
        return
        [
            .. known.Distinct()
                .OrderBy(other => Distance(wanted, words, other))
                .ThenBy(other => other, StringComparer.Ordinal)
                .Take(Count),
        ];
    }

    /// <summary>The way out that offers the nearest names.</summary>
    public static string WayOut(string name, IEnumerable<string> known) =>
        $"did you mean {string.Join(", ", To(name, known))}?";

    /// <summary>Each word wanted against the word of the other that is most like it; a name of more words comes a
    /// little later.</summary>
    private static double Distance(string wanted, string[] words, string other)
    {
        var others = WordsOf(other);
        var apart = words.Length == 0 ? 1 : words.Average(word => others.Min(one => Apart(word, one)));
        return apart + (0.1 * Apart(wanted, other)) + (0.01 * others.Length);
    }

    private static double Apart(string one, string other) => one.StartsWith(other, StringComparison.Ordinal) || other.StartsWith(one, StringComparison.Ordinal)
        ? 0.1 * Math.Abs(one.Length - other.Length) / Math.Max(one.Length, other.Length)
        : (double)Levenshtein.GetDistance(one, other) / Math.Max(one.Length, other.Length);

    private static string[] WordsOf(string name) => name.Split(['-', ' ', '_', '/'], StringSplitOptions.RemoveEmptyEntries);
}
