namespace SwapSolver.Console;

/// <summary>Finds what a mistyped name was probably meant to be.</summary>
internal static class NearestNames
{
    private const int MostNames = 3;

    /// <summary>A sentence with the names nearest to the one given, after a space; empty where none is near.</summary>
    public static string Suggest(string name, IEnumerable<string> known)
    {
        var near = Of(name, known);
        return near.Count == 0 ? "" : $" Did you mean {string.Join(" or ", near.Select(word => $"'{word}'"))}?";
    }

    // Those that differ by a third of the letters at most, nearest first.
    private static List<string> Of(string name, IEnumerable<string> known)
    {
        var limit = Math.Max(2, name.Length / 3);
        return [.. known.Distinct()
            .Select(word => (Word: word, Distance: Distance(name, word)))
            .Where(pair => pair.Distance <= limit)
            .OrderBy(pair => pair.Distance)
            .Take(MostNames)
            .Select(pair => pair.Word)];
    }

    // Letters to change, add or take away, without regard to case (Levenshtein, one row at a time).
    private static int Distance(string from, string to)
    {
        var row = new int[to.Length + 1];
        for (var column = 0; column <= to.Length; column++)
        {
            row[column] = column;
        }

        for (var line = 1; line <= from.Length; line++)
        {
            var diagonal = row[0];
            row[0] = line;
            for (var column = 1; column <= to.Length; column++)
            {
                var same = char.ToLowerInvariant(from[line - 1]) == char.ToLowerInvariant(to[column - 1]);
                var changed = diagonal + (same ? 0 : 1);
                diagonal = row[column];
                row[column] = Math.Min(changed, Math.Min(row[column], row[column - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}
