using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Panels;

/// <summary>Reads how one law rounds the lines of a panel.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Units">Unit of each line.</param>
internal sealed record RoundingFile(SourceKeys Sources, JsonPlace Units)
{
    private const double MostAmount = 1_000_000;

    private static readonly ImmutableDictionary<string, PanelLine> ById =
        Enum.GetValues<PanelLine>().ToImmutableDictionary(IdOf, StringComparer.Ordinal);

    /// <summary>What one law says; every line has its rule.</summary>
    public BasisRules Read(JsonPlace place)
    {
        place.Only("carbohydrateHoldsFibre", "serving", "lines");
        var lines = place.Get("lines").Only([.. ById.Keys]);
        Units.Only([.. ById.Keys]);
        return new BasisRules(
            place.Get("carbohydrateHoldsFibre").Flag,
            RuleOf(place.Get("serving").Only("zeroUpTo", "bands", "fewerDigitsAreCoarser", "source", "mark")),
            ById.ToImmutableDictionary(
                pair => pair.Value,
                pair => RuleOf(lines.Get(pair.Key).Only("name", "zeroUpTo", "bands", "fewerDigitsAreCoarser", "source", "mark"))),
            ById.ToImmutableDictionary(
                pair => pair.Value,
                pair => new LineWords(pair.Key, lines.Get(pair.Key).Get("name").Text, Units.Get(pair.Key).Text)));
    }

    private static string IdOf(PanelLine line) => $"{char.ToLowerInvariant(line.ToString()[0])}{line.ToString()[1..]}";

    private RoundingRule RuleOf(JsonPlace place)
    {
        ImmutableArray<RoundingBand> bands = [.. place.Get("bands").Items.Select(BandOf)];
        return bands.IsEmpty
            ? throw place.Get("bands").Fault("a line needs at least one band")
            : new RoundingRule(
                new PanelAmount(PanelRulesFile.Between(place.Get("zeroUpTo"), 0, MostAmount)),
                bands,
                place.Get("fewerDigitsAreCoarser").Flag,
                Sources.Key(place.Get("source")),
                Words.MarkOf(place.Get("mark")));
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
