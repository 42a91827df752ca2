using System.Collections.Immutable;

namespace SwapSolver.Data.Files;

/// <summary>The bibliography, <c>sources.json</c>.</summary>
public sealed class SourceKeys
{
    private readonly ImmutableDictionary<string, Source> byKey;

    private SourceKeys(ImmutableDictionary<string, Source> byKey) => this.byKey = byKey;

    /// <summary>Reads the bibliography.</summary>
    public static SourceKeys Read(DataFolder folder)
    {
        var root = folder.Read("sources.json").Only("sources");
        return new SourceKeys(root.Get("sources").Properties.ToImmutableDictionary(
            pair => pair.Key,
            pair =>
            {
                var entry = pair.Value.Only("author", "title", "year", "place", "note");
                return new Source(
                    entry.Find("author")?.Text ?? string.Empty,
                    entry.Get("title").Text,
                    entry.Find("year") is { } year ? (int)year.Number : null,
                    entry.Find("place")?.Text ?? string.Empty,
                    entry.Find("note")?.Text ?? string.Empty);
            },
            StringComparer.Ordinal));
    }

    /// <summary>The entry of a key; the key itself where there is none.</summary>
    public string Describe(string key) => byKey.TryGetValue(key, out var source) ? source.ToString() : key;

    /// <summary>A key that stands in the bibliography.</summary>
    /// <exception cref="DataFaultException">It does not.</exception>
    public string Key(JsonPlace place) => byKey.ContainsKey(place.Text)
        ? place.Text
        : throw place.Fault($"'{place.Text}' is not a key of sources.json; add the source there");
}
