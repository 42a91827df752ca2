using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>Patterns by what they may begin with: of hundreds a few can begin with a word, and to try the others takes most of a reading.</summary>
internal sealed class PatternsByStart
{
    private readonly ImmutableArray<ClausePattern> patterns;

    private readonly FrozenDictionary<string, ImmutableArray<int>> byClass;

    private readonly ImmutableArray<int> byName;

    /// <summary>Puts patterns in order.</summary>
    public PatternsByStart(ImmutableArray<ClausePattern> patterns)
    {
        this.patterns = patterns;
        byName = [.. Enumerable.Range(0, patterns.Length).Where(place => patterns[place].StartsWithName)];
        byClass = Enumerable.Range(0, patterns.Length)
            .SelectMany(place => patterns[place].StartsWith.Select(start => (start, place)))
            .GroupBy(pair => pair.start, pair => pair.place)
            .ToFrozenDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);
    }

    /// <summary>The patterns that may begin with a lexeme, in their order.</summary>
    public IEnumerable<ClausePattern> Of(Lexeme lexeme)
    {
        var places = lexeme.Classes.Keys.SelectMany(name => byClass.GetValueOrDefault(name, []));
        return (lexeme.Thing is null ? places : places.Concat(byName)).Distinct().Order().Select(place => patterns[place]);
    }
}
