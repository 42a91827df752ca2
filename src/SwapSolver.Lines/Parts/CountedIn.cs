using System.Collections.Frozen;
using System.Collections.Immutable;

namespace SwapSolver.Lines.Parts;

/// <summary>What is said to be optional, or to go elsewhere than into the bowl, is counted in; another choice is not. The caller is
/// told of both.</summary>
internal static class CountedIn
{
    private static readonly FrozenSet<string> Elsewhere = FrozenSet.Create(
        "brush", "brushing", "dust", "dusting", "finish", "garnish", "glaze", "glazing", "grease", "greasing", "kneading", "pan", "rolling", "serve", "serving", "sprinkle", "sprinkling", "tin", "top", "topping");

    /// <summary>Before a 'for', these say that more is taken, of which no amount is given.</summary>
    private static readonly FrozenSet<string> More = FrozenSet.Create("extra", "more", "some", "plus");

    /// <summary>What is to be told of a part.</summary>
    public static ImmutableArray<string> Of(LinePart part)
    {
        ImmutableArray<string> words = [.. part.Name.Concat(part.Notes).Select(word => word.ToLowerInvariant())];
        var purpose = words.TakeWhile(word => word is not ("for" or "to")).Count();
        var goesElsewhere = words.Skip(purpose + 1).Any(Elsewhere.Contains) && !(purpose > 0 && More.Contains(words[purpose - 1]));
        return
        [
            .. goesElsewhere ? new[] { "what does not go into the bowl is counted in" } : [],
            .. words.Contains("optional") ? new[] { "optional, and counted in" } : [],
            .. part.NotCounted.Select(words => $"read without '{words}'"),
        ];
    }
}
