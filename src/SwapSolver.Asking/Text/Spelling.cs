using System.Collections.Frozen;
using Quickenshtein;

namespace SwapSolver.Asking.Text;

/// <summary>Finds the word that a slip of the pen stands for. A word that is known is never changed.</summary>
internal sealed class Spelling(FrozenSet<string> known)
{
    /// <summary>Shorter words have too many neighbours [letters].</summary>
    private const int Shortest = 5;

    /// <summary>From this length on two slips are borne [letters].</summary>
    private const int TwoSlips = 9;

    private readonly ILookup<char, string> byFirst = known.Where(word => word.Length >= Shortest - 1).ToLookup(word => word[0]);

    /// <summary>The one nearest word; null where the word is known, or too far from each, or as near to several.</summary>
    public string? Nearest(string word)
    {
        if (word.Length < Shortest || known.Contains(word))
        {
            return null;
        }

        var slips = word.Length >= TwoSlips ? 2 : 1;
        var near = byFirst[word[0]]
            .Where(other => Math.Abs(other.Length - word.Length) <= slips)
            .Select(other => (Word: other, Distance: IsTurned(word, other) ? 1 : Levenshtein.GetDistance(word, other)))
            // One letter for another makes too many short words of each other: dutch is no ditch.
            .Where(pair => pair.Distance <= slips && (word.Length > Shortest || pair.Word.Length != word.Length || IsTurned(word, pair.Word)))
            .OrderBy(pair => pair.Distance)
            .Take(2)
            .ToList();
        return near.Count == 0 || (near.Count == 2 && near[0].Distance == near[1].Distance) ? null : near[0].Word;
    }

    /// <summary>Whether two letters changed places, which is one slip of the hand, or of the ear: vinager.</summary>
    private static bool IsTurned(string word, string other)
    {
        if (word.Length != other.Length)
        {
            return false;
        }

        var apart = Enumerable.Range(0, word.Length).Where(place => word[place] != other[place]).Take(3).ToList();
        return apart is [var first, var last] && word[first] == other[last] && word[last] == other[first];
    }
}
