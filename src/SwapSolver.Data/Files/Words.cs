using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Files;

/// <summary>The words that data files use for roles, marks and egg sizes.</summary>
internal static class Words
{
    private static readonly Dictionary<string, Role> Roles =
        Enum.GetValues<Role>().ToDictionary(RoleWords.Of, StringComparer.Ordinal);

    private static readonly Dictionary<string, Mark> Marks =
        Enum.GetValues<Mark>().ToDictionary(mark => mark.ToString().ToLowerInvariant(), StringComparer.Ordinal);

    private static readonly Dictionary<string, EggSize> Sizes = new(StringComparer.Ordinal)
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
    };

    public static Role RoleOf(JsonPlace place) => Known(place, Roles);

    public static Mark MarkOf(JsonPlace place) => Known(place, Marks);

    public static EggSize SizeOf(JsonPlace place) => Known(place, Sizes);

    /// <summary>What a word stands for.</summary>
    /// <param name="place">The word.</param>
    /// <param name="words">Those that are known here.</param>
    /// <exception cref="DataFaultException">It is not among them.</exception>
    public static T Known<T>(JsonPlace place, IReadOnlyDictionary<string, T> words) =>
        words.TryGetValue(place.Text, out var found)
            ? found
            : throw place.Fault($"'{place.Text}' is not known here; known are {string.Join(", ", words.Keys.Order(StringComparer.Ordinal))}");
}
