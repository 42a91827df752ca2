using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Text;

/// <summary>The phrases of questions by their first word.</summary>
internal sealed class PhraseTree
{
    private readonly FrozenDictionary<string, ImmutableArray<(ImmutableArray<string> Words, string Class, string Means)>> byFirst;

    /// <summary>Puts phrases in order.</summary>
    public PhraseTree(IEnumerable<QuestionWord> words)
    {
        var phrases = words.Select(word => (Words: WordCutter.Of(word.Phrase).Select(cut => cut.Text).ToImmutableArray(), word.Class, word.Means)).ToList();
        byFirst = phrases.GroupBy(phrase => phrase.Words[0]).ToFrozenDictionary(
            group => group.Key, group => group.OrderByDescending(phrase => phrase.Words.Length).ToImmutableArray(), StringComparer.Ordinal);
        AllWords = phrases.SelectMany(phrase => phrase.Words).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>Every word of every phrase.</summary>
    public FrozenSet<string> AllWords { get; }

    /// <summary>The longest phrase at a place: its length and all classes that it is of; length 0 where there is none.</summary>
    public (int Length, ImmutableDictionary<string, string> Classes) At(IReadOnlyList<string> words, int place)
    {
        var classes = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var length = 0;
        foreach (var phrase in byFirst.GetValueOrDefault(words[place], []))
        {
            if (phrase.Words.Length < length)
            {
                break;
            }

            if (Stands(phrase.Words, words, place))
            {
                length = phrase.Words.Length;
                classes.TryAdd(phrase.Class, phrase.Means);
            }
        }

        return (length, classes.ToImmutable());
    }

    private static bool Stands(ImmutableArray<string> phrase, IReadOnlyList<string> words, int place)
    {
        if (place + phrase.Length > words.Count)
        {
            return false;
        }

        for (var index = 0; index < phrase.Length; index++)
        {
            if (words[place + index] != phrase[index])
            {
                return false;
            }
        }

        return true;
    }
}
