using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Foods;

/// <summary>Reads <c>data/practice/measuring.json</c>.</summary>
public static class MeasuringFile
{
    /// <summary>How far a kitchen's own tests are trusted.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static MeasuringRules Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("practice/measuring.json").Only("about", "soak", "acidity");
        var soak = Sourced(root.Get("soak").Only("spreadPercent", "leastDryGrams", "mostHeldGPerG", "source", "mark"), sources);
        var acidity = Sourced(root.Get("acidity").Only("group", "spreadPercent", "leastPercent", "mostPercent", "source", "mark"), sources);
        return new MeasuringRules(
            new Percent(Positive(soak.Get("spreadPercent"))),
            new Grams(Positive(soak.Get("leastDryGrams"))),
            new PerGram(Positive(soak.Get("mostHeldGPerG"))),
            Vocabulary.Read(folder, sources).Group(acidity.Get("group")),
            new Percent(Positive(acidity.Get("spreadPercent"))),
            new Percent(Positive(acidity.Get("leastPercent"))),
            new Percent(Positive(acidity.Get("mostPercent"))));
    }

    private static JsonPlace Sourced(JsonPlace place, SourceKeys sources)
    {
        _ = sources.Key(place.Get("source"));
        _ = Words.MarkOf(place.Get("mark"));
        return place;
    }

    private static double Positive(JsonPlace place) =>
        place.Number is > 0 and <= 100 ? place.Number : throw place.Fault($"{place.Number} must lie above 0, and at most at 100");
}
