using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Forecasts;

/// <summary>Reads <c>data/forecasts/</c>: one file a forecast.</summary>
public static class ForecastFiles
{
    /// <summary>What the forecast of acidity goes by.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static AcidityPractice ReadAcidity(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("forecasts/acidity.json").Only("about", "habits", "coloursFromPh");
        var habits = root.Get("habits").Only(
            "airBeatenInLitresPerKgWater", "crumbCarbonDioxideAtm", "turnedToCarbonatePercent", "titratedToPh",
            "dryBelowWaterPercent", "sourBelowPh");
        var figures = new FigureReader(sources);
        Figure Of(string name, double most) => Habit(habits, name, 0, most, figures);
        return new AcidityPractice(
            Of("airBeatenInLitresPerKgWater", 20),
            Of("crumbCarbonDioxideAtm", 1),
            Of("turnedToCarbonatePercent", 100),
            Of("titratedToPh", 10),
            Of("dryBelowWaterPercent", 100),
            Of("sourBelowPh", 8),
            root.Get("coloursFromPh").Properties.Keys.ToImmutableDictionary(
                kind => kind, kind => Habit(root.Get("coloursFromPh"), kind, 5, 12, figures), StringComparer.Ordinal));
    }

    /// <summary>What the forecast of the rise goes by.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static RisePractice ReadRise(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("forecasts/rise.json").Only("about", "habits", "powderFloors");
        var habits = root.Get("habits").Only(
            "bowlCelsius", "mixingMinutes", "benchMinutes", "ovenMinutes", "crumbSettingCelsius", "standardBenchMinutes",
            "halfLifeMinutes", "lossBornePercent", "longestWindowMinutes", "sodaTastedGPer100G", "neutralisedFromPercent",
            "slowerByPercent", "ovenOnlyPercent", "ruleSodaTeaspoons", "ruleAcidTeaspoons", "cutFromMetres", "cutTolerancePercent",
            "saltTastedPercent", "saltTastedGrams");
        var figures = new FigureReader(sources);
        Figure Of(string name, double least, double most) => Habit(habits, name, least, most, figures);
        return new RisePractice(
            Of("bowlCelsius", 0, 50),
            Of("mixingMinutes", 0.5, 60),
            Of("benchMinutes", 0, 240),
            Of("ovenMinutes", 1, 240),
            Of("crumbSettingCelsius", 50, 100),
            Of("standardBenchMinutes", 1, 60),
            Of("halfLifeMinutes", 1, 600),
            Of("lossBornePercent", 0.1, 99),
            Of("longestWindowMinutes", 1, 600),
            Of("sodaTastedGPer100G", 0, 10),
            Of("neutralisedFromPercent", 1, 100),
            Of("slowerByPercent", 1, 100),
            Of("ovenOnlyPercent", 1, 100),
            Of("ruleSodaTeaspoons", 0.01, 10),
            Of("ruleAcidTeaspoons", 0.01, 10),
            Of("cutFromMetres", 0, 5000),
            Of("cutTolerancePercent", 0, 100),
            Of("saltTastedPercent", 0, 100),
            Of("saltTastedGrams", 0, 100),
            [.. root.Get("powderFloors").Items.Select(place => Floor(place, sources))]);
    }

    private static Figure Habit(JsonPlace habits, string name, double least, double most, FigureReader figures)
    {
        var place = habits.Get(name);
        _ = place.Get("why").Text;
        return figures.Read(place, name, least, most, "why");
    }

    private static PowderFloor Floor(JsonPlace place, SourceKeys sources)
    {
        place.Only("where", "leastPercent", "source");
        var least = place.Get("leastPercent");
        return least.Number is > 0 and <= 50
            ? new PowderFloor(place.Get("where").Text, new Percent(least.Number), sources.Key(place.Get("source")))
            : throw least.Fault($"'leastPercent' is {least.Number}; it must lie above 0 and up to 50");
    }
}
