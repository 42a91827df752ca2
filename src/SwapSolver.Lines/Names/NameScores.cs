using System.Collections.Frozen;
using System.Collections.Immutable;
using Quickenshtein;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Lines.Names;

/// <summary>Scores how near the known names are to words that are not known.</summary>
internal sealed class NameScores
{
    private const int MostWords = 8;

    private const int MostCandidates = 5;

    /// <summary>Words less alike than this are different words [1]: one slip in four letters.</summary>
    private const double Alike = 0.7;

    /// <summary>Candidates below this would only be noise [1].</summary>
    private const double LeastScore = 0.3;

    private readonly ImmutableArray<(ImmutableArray<string> Words, Ingredient Ingredient)> names;

    private readonly ImmutableArray<string> vocabulary;

    /// <summary>Scores against these names.</summary>
    public NameScores(ImmutableArray<(ImmutableArray<string> Words, Ingredient Ingredient)> names)
    {
        this.names = names;
        vocabulary = [.. names.SelectMany(name => name.Words).Distinct()];
    }

    /// <summary>The nearest ingredients, best first.</summary>
    public ImmutableArray<Candidate> Nearest(IEnumerable<string> words)
    {
        var wanted = words.Distinct().Take(MostWords).ToList();
        if (wanted.Count == 0)
        {
            return [];
        }

        var likeness = vocabulary
            .Select(word => (Word: word, Like: wanted.Max(other => Likeness(word, other))))
            .Where(pair => pair.Like > 0)
            .ToFrozenDictionary(pair => pair.Word, pair => pair.Like, StringComparer.Ordinal);
        return
        [
            .. names
                .Select(name => (name.Ingredient, Score: Score(name.Words, wanted.Count, likeness)))
                .Where(pair => pair.Score >= LeastScore)
                .GroupBy(pair => pair.Ingredient)
                .Select(group => new Candidate(group.Key, group.Max(pair => pair.Score)))
                .OrderByDescending(candidate => candidate.Score)
                .ThenBy(candidate => candidate.Ingredient.Id, StringComparer.Ordinal)
                .Take(MostCandidates),
        ];
    }

    /// <summary>Shared words, twice, by all words: Dice's measure, with misspelt words counting in part.</summary>
    private static double Score(ImmutableArray<string> words, int wanted, FrozenDictionary<string, double> likeness) =>
        Math.Min(0.99, 2 * words.Sum(word => likeness.GetValueOrDefault(word)) / (words.Length + wanted));

    private static double Likeness(string word, string other)
    {
        if (word == other)
        {
            return 1;
        }

        var longest = Math.Max(word.Length, other.Length);
        if (Math.Abs(word.Length - other.Length) > (1 - Alike) * longest)
        {
            return 0;
        }

        var alike = 1 - ((double)Levenshtein.GetDistance(word, other) / longest);
        return alike >= Alike ? alike : 0;
    }
}
