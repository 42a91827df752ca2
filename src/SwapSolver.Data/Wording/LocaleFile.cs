using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Data.Wording;

/// <summary>Reads <c>data/wording/locales.json</c>.</summary>
public static class LocaleFile
{
    private static readonly ImmutableArray<string> Signs = [".", ","];

    private static readonly ImmutableArray<string> Scales = ["celsius", "fahrenheit"];

    /// <summary>How numbers and temperatures are written, by language and region.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static Locales Read(DataFolder folder, SourceKeys sources, LabelLaws laws)
    {
        var root = folder.Read("wording/locales.json").Only("about", "notFor", "source", "mark", "locales");
        PanelRulesFile.Cite(root, sources);
        return new Locales([.. root.Get("locales").Items.Select(place => LocaleOf(place, laws))]);
    }

    private static Locale LocaleOf(JsonPlace place, LabelLaws laws)
    {
        place.Only("id", "decimalSign", "firstTemperature", "law");
        var law = place.Get("law");
        return new Locale(
            place.Get("id").Text,
            OneOf(place.Get("decimalSign"), Signs),
            OneOf(place.Get("firstTemperature"), Scales) == "fahrenheit",
            laws.Find(law.Text)?.Id ?? throw law.Fault($"'{law.Text}' is no law of data/labels/laws"));
    }

    private static string OneOf(JsonPlace place, ImmutableArray<string> known) =>
        known.Contains(place.Text) ? place.Text : throw place.Fault($"'{place.Text}' is not known here; known: {string.Join(" ", known)}");
}
