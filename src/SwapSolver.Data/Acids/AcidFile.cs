using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Acids;

/// <summary>Reads one file of <c>data/acids/</c>.</summary>
/// <param name="Figures">Reads its figures.</param>
/// <param name="Ions">Ions that may be named.</param>
/// <param name="Dissociations">Dissociating things that may be named.</param>
internal sealed record AcidFile(
    FigureReader Figures, ImmutableDictionary<string, Ion> Ions, ImmutableDictionary<string, Dissociation> Dissociations)
{
    /// <summary>How far three typical shares of gas may miss a hundred [%]: they are printed whole.</summary>
    private const double ShareTolerance = 0.5;

    /// <summary>The kind that a file of a powder names.</summary>
    public const string Blend = "blend";

    /// <summary>The acid or base that a file describes.</summary>
    public Leavener Read(JsonPlace root) => root.Get("kind") switch
    {
        { Text: "acid" } => AcidOf(root),
        { Text: "food-acid" } => FoodOf(root),
        { Text: "bicarbonate" } => BicarbonateOf(root),
        var kind => throw kind.Fault($"'{kind.Text}' is not known here; known are acid, bicarbonate, blend, food-acid"),
    };

    /// <summary>The powder that a file describes.</summary>
    /// <param name="root">The file.</param>
    /// <param name="known">Acids and bases that it may be made of.</param>
    public LeaveningBlend ReadBlend(JsonPlace root, IReadOnlyDictionary<string, Leavener> known)
    {
        root.Only("id", "kind", "parts", "taste");
        var parts = root.Get("parts").Items.Select(place =>
        {
            place.Only("of", "percent");
            return known.TryGetValue(place.Get("of").Text, out var of) && of is PureAcid or Bicarbonate
                ? new BlendPart(of, Figures.Read(place.Get("percent"), "percent", 0, 100))
                : throw place.Get("of").Fault($"'{place.Get("of").Text}' is not an acid or a bicarbonate of data/acids");
        }).ToImmutableArray();
        var sum = parts.Sum(part => part.Percent.Range.Typical);
        if (sum > 100 || !parts.Any(part => part.Of is Bicarbonate) || !parts.Any(part => part.Of is PureAcid))
        {
            throw root.Get("parts").Fault($"a powder has a bicarbonate and an acid, and at most 100 % of both; here they are {sum:0.#} %");
        }

        return new LeaveningBlend(root.Get("id").Text, root.Get("taste").Text, parts);
    }

    private PureAcid AcidOf(JsonPlace root)
    {
        root.Only("id", "kind", "formula", "gramsPerMole", "dissolved", "ions", "strengthPercent", "neutralisingValue", "dissolves", "timing", "taste");
        var strength = root.Get("strengthPercent");
        var substance = SubstanceOf(root);
        if (strength.Number is <= 0 or > 100)
        {
            throw strength.Fault($"{strength.Number} % is no strength; write above 0 and up to 100");
        }

        var neutralising = NeutralisingOf(root.Get("neutralisingValue"));
        // A salt of no protons by count can free some where a more basic one falls out; then a published value says how many.
        var least = neutralising.Rule == NeutralisingRule.Published ? 0 : 1;
        if (substance.ProtonsByCount.Value < least)
        {
            throw root.Get("dissolved").Fault($"by count this gives {substance.ProtonsByCount.Value} protons to soda; an acid gives some, or has a published value that counts");
        }

        return new PureAcid(
            root.Get("id").Text,
            root.Get("taste").Text,
            substance,
            new Percent(strength.Number),
            neutralising,
            root.Get("dissolves") switch
            {
                { Text: "at-once" } => true,
                { Text: "as-it-reacts" } => false,
                var other => throw other.Fault($"'{other.Text}' is not known here; known are as-it-reacts, at-once"),
            },
            TimingOf(root.Get("timing")));
    }

    private FoodAcid FoodOf(JsonPlace root)
    {
        root.Only("id", "kind", "acid", "nativePh", "timing", "taste");
        return new FoodAcid(
            root.Get("id").Text,
            root.Get("taste").Text,
            root.Find("acid") is { } acid ? Known(acid) : null,
            Figures.Read(root.Get("nativePh"), "nativePh", 0, 8),
            TimingOf(root.Get("timing")));
    }

    private Bicarbonate BicarbonateOf(JsonPlace root)
    {
        root.Only("id", "kind", "formula", "gramsPerMole", "dissolved", "ions", "freedByHeatPercent", "taste");
        var substance = SubstanceOf(root);
        return substance.ProtonsByCount.Value == -1
            ? new Bicarbonate(root.Get("id").Text, root.Get("taste").Text, substance, Figures.Read(root.Get("freedByHeatPercent"), "freedByHeatPercent", 0, 100))
            : throw root.Get("dissolved").Fault($"by count this takes {-substance.ProtonsByCount.Value} protons; a bicarbonate takes one");
    }

    private PureSubstance SubstanceOf(JsonPlace root) => new(
        root.Get("formula").Text,
        Figures.Read(root.Get("gramsPerMole"), "gramsPerMole", 1, 2000),
        [
            .. root.Get("dissolved").Items.Select(place => new DissociationCount(
                Known(place.Only("dissociation", "count").Get("dissociation")), DissociationFile.Whole(place.Get("count"), 1, 20))),
        ],
        [
            .. root.Get("ions").Items.Select(place => new IonCount(
                DissociationFile.Known(place.Only("ion", "count").Get("ion"), Ions), DissociationFile.Whole(place.Get("count"), 1, 20))),
        ]);

    private Neutralising NeutralisingOf(JsonPlace place)
    {
        place.Only("publishedGPer100G", "counts", "why");
        var published = place.Find("publishedGPer100G") is { } figure ? Figures.Read(figure, "publishedGPer100G", 1, 200) : null;
        var rule = place.Get("counts") switch
        {
            { Text: "computed" } => NeutralisingRule.Computed,
            { Text: "published" } => NeutralisingRule.Published,
            var other => throw other.Fault($"'{other.Text}' is not known here; known are computed, published"),
        };
        return rule == NeutralisingRule.Published && published is null
            ? throw place.Get("counts").Fault("the published value counts, but none stands here")
            : new Neutralising(published, rule, place.Get("why").Text);
    }

    private AcidTiming TimingOf(JsonPlace place)
    {
        place.Only("mixingPercent", "benchPercent", "ovenPercent");
        Figure Share(string name) => Figures.Read(place.Get(name), name, 0, 100);
        var timing = new AcidTiming(Share("mixingPercent"), Share("benchPercent"), Share("ovenPercent"));
        var sum = timing.MixingPercent.Range.Typical + timing.BenchPercent.Range.Typical + timing.OvenPercent.Range.Typical;
        return Math.Abs(sum - 100) <= ShareTolerance
            ? timing
            : throw place.Fault($"mixing, bench and oven add up to {sum:0.#} %, not to 100 %");
    }

    private Dissociation Known(JsonPlace place) => Dissociations.TryGetValue(place.Text, out var found)
        ? found
        : throw place.Fault($"'{place.Text}' is not a dissociation of chemistry/dissociations.json");
}
