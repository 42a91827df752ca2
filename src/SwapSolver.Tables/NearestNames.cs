using Quickenshtein;

namespace SwapSolver.Tables;

/// <summary>Finds the known names that are nearest to one that is not known.</summary>
internal static class NearestNames
{
    private const int Count = 3;

    private const int MostLetters = 64;

    /// <summary>The way out that offers the nearest names.</summary>
    public static string WayOut(string name, IEnumerable<string> known)
    {
        var wanted = (name.Length > MostLetters ? name[..MostLetters] : name).ToLowerInvariant();
        var nearest = known.OrderBy(other => Distance(wanted, other)).ThenBy(other => other, StringComparer.Ordinal).Take(Count);
        return $"did you mean {string.Join(", ", nearest)}?";
    }

    /// <summary>A name that begins or ends like the other is nearer than its letters say: <c>protein</c> means <c>protein_g</c>.</summary>
    private static double Distance(string wanted, string other) =>
        wanted.Length > 2 && (other.StartsWith(wanted, StringComparison.Ordinal) || wanted.StartsWith(other, StringComparison.Ordinal))
            ? 0.01 * Math.Abs(other.Length - wanted.Length)
            : (double)Levenshtein.GetDistance(wanted, other) / Math.Max(1, Math.Max(wanted.Length, other.Length));
}
