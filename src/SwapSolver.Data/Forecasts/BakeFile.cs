using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Forecasts;

/// <summary>Reads <c>data/forecasts/bake.json</c>.</summary>
public static class BakeFile
{
    private const string File = "forecasts/bake.json";

    /// <summary>What the forecast of the bake goes by.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static BakePractice Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read(File).Only("about", "components", "crumb", "oven", "target", "rack", "margins", "filling", "tins");
        var figures = new FigureReader(sources);
        return new BakePractice(
            Components(root.Get("components"), sources),
            Crumb(new Habits(root.Get("crumb"), figures)),
            Oven(new Habits(root.Get("oven"), figures)),
            Core(new Habits(root.Get("target"), figures)),
            Rack(new Habits(root.Get("rack"), figures)),
            Margins(new Habits(root.Get("margins"), figures)),
            new Habits(root.Get("filling"), figures).Of("fullPercent", 30, 100),
            [.. root.Get("tins").Items.Select(place => Tin(place, sources))]);
    }

    private static ThermalComponents Components(JsonPlace place, SourceKeys sources)
    {
        place.Only("water", "protein", "fat", "carbohydrate", "fibre", "ash");
        ThermalComponent Of(string name)
        {
            var component = place.Get(name).Only("conductivity", "density", "heat", "source", "mark", "why");
            _ = component.Get("why").Text;
            return new ThermalComponent(
                Property(component.Get("conductivity"), 0.05, 1),
                Property(component.Get("density"), 800, 3000),
                Property(component.Get("heat"), 0.5, 5),
                sources.Key(component.Get("source")),
                Words.MarkOf(component.Get("mark")));
        }

        return new ThermalComponents(Of("water"), Of("protein"), Of("fat"), Of("carbohydrate"), Of("fibre"), Of("ash"));
    }

    private static Polynomial Property(JsonPlace place, double least, double most)
    {
        if (place.Items is not [var constant, var slope, var curve])
        {
            throw place.Fault("a polynomial has three numbers: constant, slope and curve");
        }

        var read = new Polynomial(constant.Number, slope.Number, curve.Number);
        foreach (var celsius in new[] { 0.0, 60, 100, 150 })
        {
            if (!(read.At(celsius) >= least && read.At(celsius) <= most))
            {
                throw place.Fault($"this gives {read.At(celsius):0.####} at {celsius} °C; it must lie between {least} and {most}");
            }
        }

        return read;
    }

    private static CrumbPractice Crumb(Habits habits) => new(
        habits.Of("bakedDensityKgPerM3", 100, 1100),
        habits.Of("batterDensityKgPerM3", 200, 1300),
        habits.Of("vapourSharePercent", 0, 100),
        habits.Of("conductivityPercent", 50, 200),
        habits.Of("crustConductivityWPerMK", 0.02, 1),
        habits.Of("crustWaterPercentOfDry", 0, 30),
        habits.Of("boilingRiseKelvin", 0, 10));

    private static OvenPractice Oven(Habits habits) => new(
        habits.Of("dialCelsius", 50, 350),
        habits.Of("offsetKelvin", -50, 50),
        habits.Of("stillAirWPerM2K", 1, 50),
        habits.Of("fanWPerM2K", 1, 100),
        habits.Of("crustEmissivity", 0, 1),
        habits.Of("tinEmissivity", 0, 1),
        habits.Of("startCelsius", 0, 50),
        habits.Of("coldStartMinutes", 1, 60),
        habits.Of("freeFormHeightByWidthPercent", 10, 100),
        habits.Of("probeKelvin", -5, 5),
        habits.Of("skinDryingKgPerM2", 0, 2));

    private static CorePractice Core(Habits habits) => new(
        habits.Of("belowBoilingKelvin", 0.5, 20),
        habits.Of("nearestBoilingKelvin", 0.1, 5),
        habits.Of("eggSafeCelsius", 71, 100),
        habits.Of("setCelsius", 60, 95));

    private static RackPractice Rack(Habits habits) => new(
        habits.Of("roomCelsius", 0, 40),
        habits.Of("stillAirPercent", 10, 500),
        habits.Of("evaporatedPercent", 0, 60),
        habits.Of("sliceCelsius", 20, 60));

    private static MarginPractice Margins(Habits habits) => new(
        habits.Of("freePercent", 0, 100),
        habits.Of("alikePercent", 0, 100),
        habits.Of("otherShapePercent", 0, 100),
        habits.Of("farPercent", 0, 100),
        habits.Of("lossPercent", 0, 100),
        habits.Of("lossAbovePercent", 0, 100),
        habits.Of("otherwisePercent", 0, 100),
        habits.Of("coolingPercent", 0, 100));

    private static StandardTin Tin(JsonPlace place, SourceKeys sources)
    {
        place.Only("name", "lengthMm", "widthMm", "heightMm", "source");
        Millimetres Length(string name)
        {
            var side = place.Get(name);
            return side.Number is >= 20 and <= 1000
                ? new Millimetres(side.Number)
                : throw side.Fault($"'{name}' is {side.Number}; it must lie between 20 and 1000");
        }

        return new StandardTin(
            place.Get("name").Text, new Tin(Length("lengthMm"), Length("widthMm"), Length("heightMm")), sources.Key(place.Get("source")));
    }

    private sealed record Habits(JsonPlace Place, FigureReader Figures)
    {
        public Figure Of(string name, double least, double most)
        {
            var habit = Place.Get(name);
            _ = habit.Get("why").Text;
            return Figures.Read(habit, name, least, most, "why");
        }
    }
}
