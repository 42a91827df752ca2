using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Foods;

/// <summary>Reads <c>data/practice/tables.json</c>.</summary>
public static class TableRulesFile
{
    /// <summary>What a row of a table of foods must satisfy.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static TableRules Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("practice/tables.json").Only("about", "energy", "ashNotStated", "partAboveWhole");
        var energy = root.Get("energy").Only(
            "proteinKcalPerG", "fatKcalPerG", "carbohydrateKcalPerG", "restKcalPerG", "slackPercent", "slackKcalPer100G", "source", "mark");
        _ = Words.MarkOf(energy.Get("mark"));
        return new TableRules(
            new EnergyWindow(
                RangeOf(energy.Get("proteinKcalPerG")),
                RangeOf(energy.Get("fatKcalPerG")),
                RangeOf(energy.Get("carbohydrateKcalPerG")),
                RangeOf(energy.Get("restKcalPerG")),
                new Percent(UpTo100(energy.Get("slackPercent"))),
                new Kilocalories(UpTo100(energy.Get("slackKcalPer100G"))),
                sources.Key(energy.Get("source"))),
            MostOf(root.Get("ashNotStated"), sources),
            MostOf(root.Get("partAboveWhole"), sources));
    }

    private static Grams MostOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("mostGPer100G", "source", "mark");
        _ = Words.MarkOf(place.Get("mark"));
        _ = sources.Key(place.Get("source"));
        return new Grams(UpTo100(place.Get("mostGPer100G")));
    }

    private static Range RangeOf(JsonPlace place)
    {
        place.Only("low", "typical", "high");
        var range = new Range(place.Get("low").Number, place.Get("typical").Number, place.Get("high").Number);
        return range.IsInOrder && range.Low >= 0 ? range : throw place.Fault("low, typical and high must stand in order, from 0");
    }

    private static double UpTo100(JsonPlace place) =>
        place.Number is >= 0 and <= 100 ? place.Number : throw place.Fault($"{place.Number} must lie between 0 and 100");
}
