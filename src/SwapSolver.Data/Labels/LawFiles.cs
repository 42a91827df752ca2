using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Labels;

/// <summary>Reads the laws of <c>data/labels/laws/</c>. A law may have the lines of another.</summary>
public static class LawFiles
{
    private const double MostServing = 1000;

    private const string Folder = "labels/laws";

    private static readonly Dictionary<string, LabelPortion> Portions = new(StringComparer.Ordinal)
    {
        ["serving"] = LabelPortion.Serving,
        ["hundredGrams"] = LabelPortion.HundredGrams,
    };

    private static readonly Dictionary<string, PanelBasis> Bases = new(StringComparer.Ordinal)
    {
        ["unitedStates"] = PanelBasis.UnitedStates,
        ["europeanUnion"] = PanelBasis.EuropeanUnion,
    };

    private static readonly ImmutableDictionary<string, Fact> MayBeTakenOff =
        new[] { Fact.Fibre, Fact.Polyols, Fact.OrganicAcid, Fact.Allulose }.ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal);

    private static readonly ImmutableArray<string> Lists = ["us", "eu"];

    /// <summary>The laws, by id.</summary>
    /// <param name="folder">The data.</param>
    /// <param name="sources">The bibliography.</param>
    /// <param name="panels">The rules of panels, whose rounding a law may use.</param>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static LabelLaws Read(DataFolder folder, SourceKeys sources, PanelRules panels)
    {
        var methods = EnergyMethodFile.Read(folder, sources);
        var files = folder.JsonFilesOf(Folder).Select(folder.Read).ToImmutableDictionary(place => place.Get("id").Text, StringComparer.Ordinal);
        return new LabelLaws(
        [
            .. files.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => LawOf(pair.Value, LinesOf(pair.Value, files), sources, panels, methods)),
        ]);
    }

    private static JsonPlace LinesOf(JsonPlace law, ImmutableDictionary<string, JsonPlace> files) => law.Find("sameLinesAs") switch
    {
        null => law.Get("lines"),
        var like => files.TryGetValue(like.Text, out var other) ? other.Get("lines") : throw like.Fault($"no law '{like.Text}' is in this folder"),
    };

    private static LabelLaw LawOf(
        JsonPlace place, JsonPlace lines, SourceKeys sources, PanelRules panels, ImmutableDictionary<string, EnergyMethod> methods)
    {
        place.Only(
            "id", "name", "law", "asOf", "about", "notFor", "source", "mark", "panelRounding", "portion", "lessThan", "takenOffCarbohydrate",
            "carbohydrateWords", "energyMethods", "percents", "lines", "sameLinesAs", "allergenLists", "gluten", "referenceAmounts", "notes");
        PanelRulesFile.Cite(place, sources);
        var percents = place.Get("percents").Properties.ToImmutableDictionary(
            pair => pair.Key, pair => RoundingFile.RuleOf(pair.Value, sources), StringComparer.Ordinal);
        var reader = new LawLineReader(sources, panels, Words.Known(place.Get("panelRounding"), Bases), percents);
        return new LabelLaw(
            place.Get("id").Text,
            place.Get("name").Text,
            place.Get("law").Text,
            place.Get("asOf").Text,
            Words.Known(place.Get("portion"), Portions),
            place.Get("lessThan").Text.Contains("{amount}", StringComparison.Ordinal)
                ? place.Get("lessThan").Text
                : throw place.Get("lessThan").Fault("the gap {amount} is missing"),
            [.. place.Get("takenOffCarbohydrate").Items.Select(part => Words.Known(part, MayBeTakenOff))],
            place.Get("carbohydrateWords").Text,
            [.. place.Get("energyMethods").Items.Select(method => Words.Known(method, methods))],
            [.. lines.Items.Select(reader.Read)],
            [.. place.Get("allergenLists").Items.Select(list => Lists.Contains(list.Text) ? list.Text : throw list.Fault($"'{list.Text}' is no list of allergens; known: {string.Join(", ", Lists)}"))],
            GlutenOf(place.Get("gluten"), sources),
            [.. place.Find("referenceAmounts")?.Items.Select(amount => AmountOf(amount, sources)) ?? []],
            [.. place.Get("notes").Items.Select(note => note.Text)]);
    }

    private static GlutenRule GlutenOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("claimOf", "law", "asOf", "source", "mark");
        return new GlutenRule(
            place.Get("claimOf").Text, place.Get("law").Text, place.Get("asOf").Text, sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")));
    }

    private static ReferenceAmount AmountOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("food", "grams", "source", "mark");
        var grams = place.Get("grams");
        return new ReferenceAmount(
            place.Get("food").Text,
            new Grams(grams.Number is > 0 and <= MostServing ? grams.Number : throw grams.Fault($"{grams.Number} g are no amount that is eaten at once; give above 0 and up to {MostServing}")),
            sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }
}
