using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Files;

/// <summary>The words that data files use for roles, marks and egg sizes.</summary>
internal static class Words
{
    private static readonly ImmutableDictionary<string, Role> Roles =
        Enum.GetValues<Role>().ToImmutableDictionary(RoleWords.Of, StringComparer.Ordinal);

    private static readonly ImmutableDictionary<string, Mark> Marks =
        Enum.GetValues<Mark>().ToImmutableDictionary(mark => mark.ToString().ToLowerInvariant(), StringComparer.Ordinal);

    private static readonly ImmutableDictionary<string, EggSize> Sizes = new Dictionary<string, EggSize>
    {
        ["SMALL_US"] = EggSize.SmallUs,
        ["MEDIUM_US"] = EggSize.MediumUs,
        ["LARGE_US"] = EggSize.LargeUs,
        ["EXTRA_LARGE_US"] = EggSize.ExtraLargeUs,
        ["JUMBO_US"] = EggSize.JumboUs,
        ["SMALL_EU"] = EggSize.SmallEu,
        ["MEDIUM_EU"] = EggSize.MediumEu,
        ["LARGE_EU"] = EggSize.LargeEu,
        ["EXTRA_LARGE_EU"] = EggSize.ExtraLargeEu,
    }.ToImmutableDictionary(StringComparer.Ordinal);

    public static Role RoleOf(JsonPlace place) => Find(Roles, place);

    public static Mark MarkOf(JsonPlace place) => Find(Marks, place);

    public static EggSize SizeOf(JsonPlace place) => Find(Sizes, place);

    private static T Find<T>(ImmutableDictionary<string, T> words, JsonPlace place) =>
        words.TryGetValue(place.Text, out var found)
            ? found
            : throw place.Fault($"'{place.Text}' is not known here; known are {string.Join(", ", words.Keys.Order(StringComparer.Ordinal))}");
}
