using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>measures/fillings.json</c>.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Pantry">The ingredients.</param>
internal sealed record FillingFile(SourceKeys Sources, Pantry Pantry)
{
    /// <summary>How measures are filled.</summary>
    public Fillings Read(JsonPlace root)
    {
        root.Only("about", "notFor", "powder", "liquid", "scale", "fillings", "pours", "wholeSeeds");
        var scale = root.Get("scale").Only("grams", "source", "mark");
        _ = Sources.Key(scale.Get("source"));
        _ = Words.MarkOf(scale.Get("mark"));
        var whole = root.Get("wholeSeeds").Only("of", "leastGroundPercent", "source", "mark");
        _ = Sources.Key(whole.Get("source"));
        _ = Words.MarkOf(whole.Get("mark"));
        var seen = new NamesOnce();
        return new Fillings(
            [
                .. root.Get("fillings").Items.Select(place => Filling(
                    place.Only("filling", "names", "lowPercent", "typicalPercent", "highPercent", "source", "mark"),
                    place.Get("filling").Text,
                    seen.Read(place.Get("names")))),
            ],
            Unsaid(root, "powder"),
            Unsaid(root, "liquid"),
            new Grams(UnitFile.Positive(scale.Get("grams"))),
            [.. root.Get("pours").Items.Select(place => IngredientId(place, Pantry))],
            new WholeSeedWeights(
                [.. whole.Get("of").Items.Select(place => IngredientId(place, Pantry))],
                new Percent(UnitFile.Positive(whole.Get("leastGroundPercent")))));
    }

    internal static string IngredientId(JsonPlace place, Pantry pantry) => pantry.TryGet(place.Text, out var ingredient)
        ? ingredient.Id
        : throw place.Fault($"'{place.Text}' is not an ingredient of the pantry");

    private Filling Unsaid(JsonPlace root, string name) =>
        Filling(root.Get(name).Only("lowPercent", "typicalPercent", "highPercent", "source", "mark"), name, []);

    private Filling Filling(JsonPlace place, string id, ImmutableArray<string> names)
    {
        Percent Share(string name) => new(UnitFile.Positive(place.Get(name)));
        var filling = new Filling(
            id, names, Share("lowPercent"), Share("typicalPercent"), Share("highPercent"), Sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")));
        return filling.Low.Value <= filling.Typical.Value && filling.Typical.Value <= filling.High.Value
            ? filling
            : throw place.Fault($"{id}: low {filling.Low.Value}, typical {filling.Typical.Value}, high {filling.High.Value} must stand in order");
    }
}
