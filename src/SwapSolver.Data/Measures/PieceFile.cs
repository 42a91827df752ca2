using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>measures/pieces.json</c>.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Pantry">The ingredients.</param>
internal sealed record PieceFile(SourceKeys Sources, Pantry Pantry)
{
    /// <summary>The pieces.</summary>
    public ImmutableArray<PieceUnit> ReadPieces(JsonPlace list, NamesOnce seen) =>
    [
        .. list.Items.Select(place => new PieceUnit(
            place.Only("piece", "names", "of", "millilitres", "isContainer").Get("piece").Text,
            seen.Read(place.Get("names")),
            [.. place.Get("of").Items.Select(Weight)],
            place.Find("millilitres") is { } volume ? Volume(volume) : null,
            place.Find("isContainer") is { Flag: true })),
    ];

    /// <summary>The classes of eggs.</summary>
    public EggClasses ReadEggs(JsonPlace list)
    {
        var classes = list.Items.Select(Egg).ToImmutableArray();
        return Enum.GetValues<EggSize>().All(size => classes.Any(one => one.Size == size))
            ? new EggClasses(classes)
            : throw list.Fault("every size of egg needs its row here");
    }

    private PieceWeight Weight(JsonPlace place)
    {
        place.Only("ingredient", "low", "grams", "high", "sizes", "source", "mark");
        Grams Of(string name) => new(UnitFile.Positive(place.Get(name)));
        var each = new GramRange(Of("low"), Of("grams"), Of("high"));
        return each.Low <= each.Typical && each.Typical <= each.High
            ? new PieceWeight(FillingFile.IngredientId(place.Get("ingredient"), Pantry), each, Sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")))
            {
                Sizes = place.Find("sizes") is { } sizes
                    ? sizes.Properties.ToImmutableDictionary(pair => pair.Key, pair => new Grams(UnitFile.Positive(pair.Value)), StringComparer.Ordinal)
                    : ImmutableDictionary<string, Grams>.Empty,
            }
            : throw place.Fault("low, grams and high must stand in order");
    }

    private PieceVolume Volume(JsonPlace place)
    {
        place.Only("low", "typical", "high", "source", "mark");
        Millilitres Of(string name) => new(UnitFile.Positive(place.Get(name)));
        var volume = new PieceVolume(Of("low"), Of("typical"), Of("high"), Sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")));
        return volume.Low.Value <= volume.Typical.Value && volume.Typical.Value <= volume.High.Value
            ? volume
            : throw place.Fault("low, typical and high must stand in order");
    }

    private EggClass Egg(JsonPlace place)
    {
        place.Only("size", "names", "class", "lowPercent", "highPercent", "fromGramsInShell", "source", "mark");
        var from = place.Get("fromGramsInShell");
        return new EggClass(
            Words.SizeOf(place.Get("size")),
            place.Get("class") switch
            {
                { Text: "US" } => EggRule.Us,
                { Text: "EU" } => EggRule.Eu,
                var other => throw other.Fault($"'{other.Text}' is no class of eggs; write US or EU"),
            },
            [.. place.Get("names").Items.Select(name => name.Text)],
            new Percent(UnitFile.Positive(place.Get("lowPercent"))),
            new Percent(UnitFile.Positive(place.Get("highPercent"))),
            from.Number >= 0 ? new Grams(from.Number) : throw from.Fault($"{from.Number} is below 0"),
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }
}
