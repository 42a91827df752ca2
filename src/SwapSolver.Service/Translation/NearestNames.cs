using Quickenshtein;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the known names that are nearest to one that is not known.</summary>
internal static class NearestNames
{
    private const int Count = 3;

    private const int MostLetters = 100;

    /// <summary>The nearest names, nearest first. Words that two names share count before letters do: 'almonds ground'
    /// is nearer to 'almond-meal' than to 'salmon'.</summary>
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

    private static double Distance(string wanted, string[] words, string other)
    {
        var letters = (double)Levenshtein.GetDistance(wanted, other) / Math.Max(wanted.Length, other.Length);
        var shared = WordsOf(other).Count(word => words.Any(mine => mine.StartsWith(word, StringComparison.Ordinal) || word.StartsWith(mine, StringComparison.Ordinal)));
        return letters - (0.5 * shared);
    }

    private static string[] WordsOf(string name) => name.Split(['-', ' ', '_', '/'], StringSplitOptions.RemoveEmptyEntries);
}
