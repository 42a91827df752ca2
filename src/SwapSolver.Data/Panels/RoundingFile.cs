using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Panels;

/// <summary>Reads how one law rounds the lines of a panel.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Units">Unit of each line.</param>
internal sealed record RoundingFile(SourceKeys Sources, JsonPlace Units)
{
    private const double MostAmount = 1_000_000;

    /// <summary>The lines of a panel, by their ids.</summary>
    internal static readonly Dictionary<string, PanelLine> ById =
        Enum.GetValues<PanelLine>().ToDictionary(IdOf, StringComparer.Ordinal);

    /// <summary>What one law says; every line has its rule.</summary>
    public BasisRules Read(JsonPlace place)
    {
        place.Only("carbohydrateHoldsFibre", "serving", "lines");
        var lines = place.Get("lines").Only([.. ById.Keys]);
        Units.Only([.. ById.Keys]);
        return new BasisRules(
            place.Get("carbohydrateHoldsFibre").Flag,
            RuleOf(place.Get("serving"), Sources),
            ById.ToImmutableDictionary(
                pair => pair.Value,
                pair => RuleOf(lines.Get(pair.Key), Sources, "name")),
            ById.ToImmutableDictionary(
                pair => pair.Value,
                pair => new LineWords(pair.Key, lines.Get(pair.Key).Get("name").Text, Units.Get(pair.Key).Text)));
    }

    private static string IdOf(PanelLine line) => $"{char.ToLowerInvariant(line.ToString()[0])}{line.ToString()[1..]}";

    /// <summary>How one line is rounded.</summary>
    /// <param name="place">The rule.</param>
    /// <param name="sources">The bibliography.</param>
    /// <param name="beside">What stands beside the rule.</param>
    public static RoundingRule RuleOf(JsonPlace place, SourceKeys sources, params ReadOnlySpan<string> beside)
    {
        place.Only([.. beside, "zeroUpTo", "bands", "fewerDigitsAreCoarser", "small", "dropsZeros", "source", "mark"]);
        var isCoarser = place.Get("fewerDigitsAreCoarser").Flag;
        ImmutableArray<RoundingBand> bands = [.. place.Get("bands").Items.Select(BandOf)];
        return bands.IsEmpty
            ? throw place.Get("bands").Fault("a line needs at least one band")
            : new RoundingRule(
                new PanelAmount(PanelRulesFile.Between(place.Get("zeroUpTo"), 0, MostAmount)),
                bands,
                isCoarser,
                sources.Key(place.Get("source")),
                Words.MarkOf(place.Get("mark")))
            {
                Small = [.. place.Find("small")?.Items.Select(SmallOf) ?? []],
                DropsZeros = place.Find("dropsZeros")?.Flag ?? !isCoarser,
            };
    }

    private static SmallAmount SmallOf(JsonPlace place)
    {
        place.Only("below", "upTo", "prints");
        var (below, upTo, prints) = (place.Find("below"), place.Find("upTo"), place.Get("prints"));
        var end = below ?? upTo ?? throw place.Fault("say where small amounts end: 'below' or 'upTo'");
        return PrintedFigure.TryRead(prints.Text, out var figure)
            ? new SmallAmount(new PanelAmount(PanelRulesFile.Between(end, 0, MostAmount)), below is null, figure)
            : throw prints.Fault($"'{prints.Text}' is no figure of a label, as 0 or <1");
    }

    private static RoundingBand BandOf(JsonPlace place)
    {
        place.Only("from", "to", "step");
        var from = PanelRulesFile.Between(place.Get("from"), 0, MostAmount);
        var step = place.Get("step");
        return new RoundingBand(
            new PanelAmount(from),
            place.Find("to") is { } to
                ? new PanelAmount(to.Number > from ? to.Number : throw to.Fault($"a band cannot end at {to.Number} that begins at {from}"))
                : PanelAmount.Endless,
            new PanelAmount(step.Number is > 0 and <= MostAmount ? step.Number : throw step.Fault($"a step of {step.Number} rounds nothing; it must be above 0")));
    }
}
