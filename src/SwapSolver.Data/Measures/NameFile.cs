using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>measures/names.json</c>.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Pantry">The ingredients.</param>
internal sealed record NameFile(SourceKeys Sources, Pantry Pantry)
{
    /// <summary>The names, those that every ingredient has of itself among them.</summary>
    public IngredientNames Read(JsonPlace root)
    {
        root.Only("about", "notFor", "source", "mark", "describes", "describesAssumed", "sameWords", "partsOfEggs", "otherThings", "names");
        _ = Sources.Key(root.Get("source"));
        _ = Words.MarkOf(root.Get("mark"));
        var seen = new NamesOnce();
        var described = new NamesOnce();
        var spelt = new NamesOnce();
        var own = Pantry.Ingredients.SelectMany(ingredient => new[]
        {
            new IngredientName(ingredient.Id.Replace('-', ' '), ingredient.Id, null, []), new IngredientName(ingredient.Name, ingredient.Id, null, []),
        });
        return new IngredientNames(
            [.. own, .. root.Get("names").Items.SelectMany(place => Names(place, seen))],
            [
                .. root.Get("otherThings").Items.SelectMany(place =>
                    seen.Read(place.Only("names", "says").Get("names")).Select(name => new OtherThing(name, place.Get("says").Text))),
            ],
            [.. described.Read(root.Get("describes"))],
            root.Get("describesAssumed").Items
                .SelectMany(place => described.Read(place.Only("words", "says").Get("words")).Select(word => (word, Says: place.Get("says").Text)))
                .ToImmutableDictionary(pair => pair.word, pair => pair.Says, StringComparer.Ordinal),
            root.Get("sameWords").Items
                .SelectMany(place => spelt.Read(place.Only("word", "also").Get("also")).Select(also => (also, Word: place.Get("word").Text)))
                .ToImmutableDictionary(pair => pair.also, pair => pair.Word, StringComparer.Ordinal),
            [
                .. root.Get("partsOfEggs").Items.SelectMany(place => place.Only("ingredient", "names").Get("names").Items
                    .Select(name => new IngredientName(name.Text, Id(place), null, []))),
            ]);
    }

    private IEnumerable<IngredientName> Names(JsonPlace place, NamesOnce seen)
    {
        place.Only("ingredient", "names", "assumed");
        var id = Id(place);
        var sure = seen.Read(place.Get("names")).Select(name => new IngredientName(name, id, null, []));
        var assumed = place.Find("assumed")?.Items.SelectMany(row =>
            seen.Read(row.Only("names", "says", "form").Get("names")).Select(name => new IngredientName(
                name, id, row.Get("says").Text, row.Find("form") is { } form ? [.. form.Items.Select(word => word.Text)] : [])));
        return [.. sure, .. assumed ?? []];
    }

    private string Id(JsonPlace place) => FillingFile.IngredientId(place.Get("ingredient"), Pantry);
}
