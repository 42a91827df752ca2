using SwapSolver.Data.Files;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>data/measures/oven-dials.json</c>.</summary>
public static class OvenDialFile
{
    /// <summary>How an oven is set by other dials.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static OvenDials Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("measures/oven-dials.json").Only("about", "notFor", "fanLessKelvin", "lowestOvenCelsius", "gasMarks");
        var marks = root.Get("gasMarks").Only("source", "mark", "marks");
        PanelRulesFile.Cite(marks, sources);
        return new OvenDials(
            Temperature(root.Get("fanLessKelvin"), 0, 50, sources),
            Temperature(root.Get("lowestOvenCelsius"), 50, 150, sources),
            [
                .. marks.Get("marks").Items.Select(place => place.Only("mark", "fahrenheit"))
                    .Select(place => new GasMark(place.Get("mark").Text, Celsius.OfFahrenheit(PanelRulesFile.Between(place.Get("fahrenheit"), 100, 600))))
                    .OrderBy(mark => mark.Setting.Value),
            ]);
    }

    private static Celsius Temperature(JsonPlace place, double least, double most, SourceKeys sources)
    {
        place.Only("value", "source", "mark");
        PanelRulesFile.Cite(place, sources);
        return new Celsius(PanelRulesFile.Between(place.Get("value"), least, most));
    }
}
