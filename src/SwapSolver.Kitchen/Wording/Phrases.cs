using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Wording;

/// <summary>Sentences with gaps, from <c>data/wording/</c>. A gap is written as its name in braces.</summary>
/// <param name="ById">The sentences by id.</param>
public sealed record Phrases(ImmutableDictionary<string, string> ById)
{
    /// <summary>A sentence with its gaps filled.</summary>
    /// <param name="id">Id of the sentence.</param>
    /// <param name="fillings">Name and filling of each gap.</param>
    public string Say(string id, params ReadOnlySpan<(string Gap, string Filling)> fillings)
    {
        var sentence = ById[id];
        foreach (var (gap, filling) in fillings)
        {
            sentence = sentence.Replace($"{{{gap}}}", filling, StringComparison.Ordinal);
        }

        return sentence;
    }

    /// <summary>Several things in one breath: "a, b and c".</summary>
    public static string List(IEnumerable<string> things)
    {
        var all = things.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }
}
