using System.Text.Json;
using SwapSolver.Data.Files;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Files;

public sealed class SourceKeysTests
{
    private static readonly HashSet<string> Keys = ["source", "rangeSource", "sources"];

    [Fact]
    public void Every_source_of_the_bibliography_is_cited_and_every_citation_is_in_it()
    {
        var cited = Directory.EnumerateFiles(TestKitchen.Folder.Path, "*.json", SearchOption.AllDirectories)
            .Where(path => Path.GetFileName(path) != "sources.json")
            .SelectMany(path => CitedIn(Open(path)))
            .ToHashSet();
        var listed = Open(Path.Combine(TestKitchen.Folder.Path, "sources.json"))
            .GetProperty("sources").EnumerateObject().Select(entry => entry.Name).ToHashSet();

        Assert.Empty(listed.Except(cited));
        Assert.Empty(cited.Except(listed));
    }

    [Fact]
    public void A_source_is_described_with_author_title_year_place_and_note()
    {
        var sources = SourceKeys.Read(TestKitchen.Folder);

        Assert.Equal(
            "U.S. Department of Agriculture, Agricultural Research Service, National Nutrient Database for Standard Reference, release 26, 2013, abbreviated file (public domain)",
            sources.Describe("usda-sr26"));
        Assert.Equal("hearsay", sources.Describe("hearsay"));
    }

    private static JsonElement Open(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(path));
        return document.RootElement.Clone();
    }

    private static IEnumerable<string> CitedIn(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property =>
            Keys.Contains(property.Name) ? Texts(property.Value) : CitedIn(property.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(CitedIn),
        _ => [],
    };

    private static IEnumerable<string> Texts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => [element.GetString()!],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
        _ => [],
    };
}
