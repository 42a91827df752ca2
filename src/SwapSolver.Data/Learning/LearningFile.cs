using SwapSolver.Data.Files;
using SwapSolver.Learning;

namespace SwapSolver.Data.Learning;

/// <summary>Reads <c>data/practice/learning.json</c>.</summary>
public static class LearningFile
{
    private static readonly string[] Common = ["title", "unit", "scatterPercent", "mattersPercent", "why", "source", "mark"];

    private static readonly string[] Ranged = [.. Common, "low", "typical", "high", "least", "most"];

    /// <summary>What a kitchen can learn of itself.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static LearningRules Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("practice/learning.json").Only("about", "ovenFactor", "bakeLoss", "gasKept", "waterBound");
        var (oven, loss) = (Sourced(root.Get("ovenFactor").Only(Ranged), sources), Sourced(root.Get("bakeLoss").Only(Ranged), sources));
        var gas = Sourced(root.Get("gasKept").Only([.. Ranged, "batterDensityGPerMl", "domePercent"]), sources);
        var water = Sourced(root.Get("waterBound").Only([.. Common, "mostTimesTypical"]), sources);
        return new LearningRules(
            Fact("oven-factor", oven),
            Fact("bake-loss", loss),
            Fact("gas-kept", gas),
            new LoafReading(Positive(gas.Get("batterDensityGPerMl")), Positive(gas.Get("domePercent")) / 100),
            new SoakLearning(water.Get("title").Text, water.Get("unit").Text, Positive(water.Get("mostTimesTypical")), Positive(water.Get("scatterPercent")) / 100),
            new WidthsThatMatter(Matters(oven), Matters(loss), Matters(gas), Matters(water)));
    }

    private static LearnableFact Fact(string id, JsonPlace place)
    {
        var published = new Kitchen.Ingredients.Range(place.Get("low").Number, place.Get("typical").Number, place.Get("high").Number);
        var possible = new Kitchen.Ingredients.Range(place.Get("least").Number, published.Typical, place.Get("most").Number);
        return published.IsInOrder && possible.IsInOrder && possible.Low <= published.Low && possible.High >= published.High
            ? new LearnableFact(id, place.Get("title").Text, place.Get("unit").Text, published, possible, Positive(place.Get("scatterPercent")) / 100)
            : throw place.Fault("least, low, typical, high and most must stand in this order");
    }

    private static double Matters(JsonPlace place) => Positive(place.Get("mattersPercent"));

    private static JsonPlace Sourced(JsonPlace place, SourceKeys sources)
    {
        _ = sources.Key(place.Get("source"));
        _ = Words.MarkOf(place.Get("mark"));
        return place;
    }

    private static double Positive(JsonPlace place) =>
        place.Number is > 0 and <= 100 ? place.Number : throw place.Fault($"{place.Number} must lie above 0, and at most at 100");
}
