using Quickenshtein;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the known names that are nearest to one that is not known.</summary>
internal static class NearestNames
{
    private const int Count = 3;

    private const int MostLetters = 100;

    private static readonly Comparer<(double Distance, string Name)> ByDistance = Comparer<(double Distance, string Name)>.Create(
        (one, other) => one.Distance.CompareTo(other.Distance) is var order and not 0 ? order : string.CompareOrdinal(one.Name, other.Name));

    /// <summary>The nearest names, nearest first. Words count before letters do: 'almonds ground' is nearer
    /// to 'almond-meal' than to 'salmon'.</summary>
    public static IReadOnlyList<string> To(string name, IEnumerable<string> known)
    {
        var wanted = (name.Length > MostLetters ? name[..MostLetters] : name).ToLowerInvariant();
        var words = WordsOf(wanted);
        // Thousands of names are made of far fewer words, and only names whose words come near are looked at letter by letter.
        var apart = new Dictionary<string, double[]>(StringComparer.Ordinal);
        var nearest = new SortedSet<(double Distance, string Name)>(ByDistance);
        foreach (var (least, other) in known.Distinct().Select(other => (Least: ByWords(words, other, apart), Name: other)).OrderBy(pair => pair.Least))
        {
            if (nearest.Count == Count && least > nearest.Max.Distance)
            {
                break;
            }

            nearest.Add((least + (0.1 * Apart(wanted, other)), other));
            if (nearest.Count > Count)
            {
                nearest.Remove(nearest.Max);
            }
        }

        return [.. nearest.Select(pair => pair.Name)];
    }

    /// <summary>The way out that offers the nearest names.</summary>
    public static string WayOut(string name, IEnumerable<string> known) =>
        $"did you mean {string.Join(", ", To(name, known))}?";

    /// <summary>Each word wanted against the word of the other that is most like it; a name of more words comes a
    /// little later.</summary>
    private static double ByWords(string[] words, string other, Dictionary<string, double[]> apart)
    {
        var others = WordsOf(other);
        Span<double> least = stackalloc double[words.Length];
        least.Fill(double.PositiveInfinity);
        foreach (var one in others)
        {
            if (!apart.TryGetValue(one, out var distances))
            {
                distances = [.. words.Select(word => Apart(word, one))];
                apart.Add(one, distances);
            }

            for (var place = 0; place < words.Length; place++)
            {
                least[place] = Math.Min(least[place], distances[place]);
            }
        }

        var sum = 0.0;
        foreach (var distance in least)
        {
            sum += distance;
        }

        return (words.Length == 0 ? 1 : sum / words.Length) + (0.01 * others.Length);
    }

    private static double Apart(string one, string other) => one.StartsWith(other, StringComparison.Ordinal) || other.StartsWith(one, StringComparison.Ordinal)
        ? 0.1 * Math.Abs(one.Length - other.Length) / Math.Max(one.Length, other.Length)
        : (double)Levenshtein.GetDistance(one, other) / Math.Max(one.Length, other.Length);

    private static string[] WordsOf(string name) => name.Split(['-', ' ', '_', '/'], StringSplitOptions.RemoveEmptyEntries);
}
