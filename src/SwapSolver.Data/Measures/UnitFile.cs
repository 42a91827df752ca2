using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>measures/units.json</c>.</summary>
/// <param name="Sources">The bibliography.</param>
internal sealed record UnitFile(SourceKeys Sources)
{
    private const string Any = "ANY";

    private static readonly Dictionary<string, MeasureSystem> Systems = new(StringComparer.Ordinal)
    {
        ["US_CUSTOMARY"] = MeasureSystem.UsCustomary,
        ["US_LABELLING"] = MeasureSystem.UsLabelling,
        ["METRIC"] = MeasureSystem.Metric,
        ["AUSTRALIAN"] = MeasureSystem.Australian,
        ["UK_IMPERIAL"] = MeasureSystem.UkImperial,
    };

    /// <summary>The units of volume.</summary>
    public ImmutableArray<VolumeUnit> ReadVolumes(JsonPlace list, NamesOnce seen) =>
    [
        .. list.Items.Select(place => new VolumeUnit(
            place.Only("unit", "names", "sizes").Get("unit").Text,
            seen.Read(place.Get("names")),
            [
                .. place.Get("sizes").Items.Select(size => new VolumeSize(
                    SystemOrAny(size.Only("system", "millilitres", "source", "mark").Get("system")),
                    new Millilitres(Positive(size.Get("millilitres"))),
                    Sources.Key(size.Get("source")),
                    Words.MarkOf(size.Get("mark")))),
            ])),
    ];

    /// <summary>The units of mass.</summary>
    public ImmutableArray<MassUnit> ReadMasses(JsonPlace list, NamesOnce seen) => [.. list.Items.Select(place => Mass(place, seen))];

    /// <summary>The words around units.</summary>
    public static MeasureWords ReadWords(JsonPlace root) => new(
        Each(root.Get("systems"), "system", place => SystemOrAny(place) ?? throw place.Fault("'ANY' is no system that a word can say")),
        Each(root.Get("numbers"), "value", place => Amount.Of(Positive(place))),
        Each(root.Get("foreign"), "language", place => place.Text));

    internal static double Positive(JsonPlace place) =>
        place.Number > 0 ? place.Number : throw place.Fault($"{place.Number} must be above 0");

    private MassUnit Mass(JsonPlace place, NamesOnce seen)
    {
        var sizes = place.Only("unit", "names", "sizes").Get("sizes").Items.Select(size => new MassSize(
            SystemOrAny(size.Only("system", "grams", "source", "mark").Get("system")),
            new Grams(Positive(size.Get("grams"))),
            Sources.Key(size.Get("source")),
            Words.MarkOf(size.Get("mark")))).ToImmutableArray();
        return sizes.Any(size => size.System is null)
            ? new MassUnit(place.Get("unit").Text, seen.Read(place.Get("names")), sizes)
            : throw place.Get("sizes").Fault("a unit of mass needs a size for 'ANY' system");
    }

    private static MeasureSystem? SystemOrAny(JsonPlace place) =>
        place.Text == Any ? null
        : Systems.TryGetValue(place.Text, out var system) ? system
        : throw place.Fault($"'{place.Text}' is not a system; known are {Any}, {string.Join(", ", Systems.Keys.Order(StringComparer.Ordinal))}");

    private static ImmutableDictionary<string, T> Each<T>(JsonPlace list, string key, Func<JsonPlace, T> read)
    {
        var seen = new NamesOnce();
        return list.Items
            .SelectMany(place => seen.Read(place.Only(key, "names").Get("names")).Select(name => (name, Value: read(place.Get(key)))))
            .ToImmutableDictionary(pair => pair.name, pair => pair.Value, StringComparer.Ordinal);
    }
}
