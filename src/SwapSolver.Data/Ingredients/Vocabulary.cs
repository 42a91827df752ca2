using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Ingredients;

/// <summary>The allergens and groups that may be named, <c>labels/allergens.json</c> and <c>labels/groups.json</c>.</summary>
/// <param name="Allergens">The allergens.</param>
/// <param name="Groups">The groups.</param>
public sealed record Vocabulary(ImmutableArray<AllergenName> Allergens, ImmutableArray<GroupName> Groups)
{
    /// <summary>Reads both files.</summary>
    public static Vocabulary Read(DataFolder folder, SourceKeys sources)
    {
        var allergens = folder.Read("labels/allergens.json").Only("about", "sources", "allergens");
        foreach (var source in allergens.Get("sources").Items)
        {
            _ = sources.Key(source);
        }

        var groups = folder.Read("labels/groups.json").Only("about", "groups");
        return new Vocabulary(
            [.. allergens.Get("allergens").Items.Select(place => place.Only("id", "name", "also", "lists"))
                .Select(place => new AllergenName(
                    place.Get("id").Text, place.Get("name").Text, Texts(place.Get("also")), Texts(place.Get("lists"))))],
            [.. groups.Get("groups").Items.Select(place => place.Only("id", "name", "also"))
                .Select(place => new GroupName(place.Get("id").Text, place.Get("name").Text, Texts(place.Get("also"))))]);
    }

    internal string Allergen(JsonPlace place) => Allergens.Any(allergen => allergen.Id == place.Text)
        ? place.Text
        : throw place.Fault($"'{place.Text}' is not an allergen of labels/allergens.json");

    internal string AllergenOn(string list, JsonPlace place) =>
        Allergens.First(allergen => allergen.Id == Allergen(place)).Lists.Contains(list)
            ? place.Text
            : throw place.Fault($"'{place.Text}' is not on the {list} list by labels/allergens.json");

    internal string Group(JsonPlace place) => Groups.Any(group => group.Id == place.Text)
        ? place.Text
        : throw place.Fault($"'{place.Text}' is not a group of labels/groups.json");

    private static ImmutableArray<string> Texts(JsonPlace place) => [.. place.Items.Select(item => item.Text)];
}
