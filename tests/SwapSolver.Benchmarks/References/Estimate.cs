using System.Text.Json;

namespace SwapSolver.Benchmarks.References;

/// <summary>Figures of <c>data/</c> that stand for no published figure, by the reason that they share.</summary>
/// <param name="Source">Key of the reason in the bibliography.</param>
/// <param name="Marks">How they are known.</param>
/// <param name="Reason">The reason in words.</param>
/// <param name="Figures">Where each stands.</param>
internal sealed record Estimate(string Source, IReadOnlyList<string> Marks, string Reason, IReadOnlyList<string> Figures)
{
    /// <summary>All that a folder of data holds: what is marked memory or practice.</summary>
    public static IReadOnlyList<Estimate> All(string folder)
    {
        using var sources = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "sources.json")));
        var known = sources.RootElement.GetProperty("sources");
        return
        [
            .. Directory.GetFiles(folder, "*.json", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .SelectMany(Found)
                .GroupBy(one => one.Source)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new Estimate(group.Key, [.. group.Select(one => one.Mark).Distinct()], Words(known, group.Key), [.. group.Select(one => one.Place)])),
        ];
    }

    private static IEnumerable<(string Source, string Mark, string Place)> Found(string file)
    {
        using var read = JsonDocument.Parse(File.ReadAllText(file));
        return [.. Found(read.RootElement, Path.GetFileNameWithoutExtension(file))];
    }

    private static IEnumerable<(string Source, string Mark, string Place)> Found(JsonElement element, string place)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            return element.EnumerateArray().SelectMany((item, index) => Found(item, $"{place}[{index}]"));
        }

        if (element.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        IEnumerable<(string, string, string)> here = Text(element, "mark") is "memory" or "practice" && Text(element, "source") is { } source
            ? [(source, Text(element, "mark")!, place)]
            : [];
        return here.Concat(element.EnumerateObject().SelectMany(pair => Found(pair.Value, $"{place}.{pair.Name}")));
    }

    private static string? Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static string Words(JsonElement known, string key)
    {
        if (!known.TryGetProperty(key, out var source))
        {
            throw new InvalidDataException($"'{key}' is no source of the bibliography");
        }

        return $"{Text(source, "title")}: {Text(source, "note")}";
    }
}
