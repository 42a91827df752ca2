using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Labels;

/// <summary>Reads the lines of one law.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Panels">The rules of panels.</param>
/// <param name="Basis">Whose rounding of panels a line means that says <c>panel</c>.</param>
/// <param name="Percents">How percentages of daily values are rounded, by name.</param>
internal sealed record LawLineReader(
    SourceKeys Sources, PanelRules Panels, PanelBasis Basis, ImmutableDictionary<string, RoundingRule> Percents)
{
    private const string AsPanels = "panel";

    private const double MostPerDay = 100_000;

    private static readonly Dictionary<string, Nutrient> Nutrients =
        Enum.GetValues<Nutrient>().ToDictionary(nutrient => $"{char.ToLowerInvariant(nutrient.ToString()[0])}{nutrient.ToString()[1..]}", StringComparer.Ordinal);

    /// <summary>One line.</summary>
    public LawLine Read(JsonPlace place)
    {
        place.Only("nutrient", "name", "unit", "depth", "required", "rounding", "dailyValue");
        var id = place.Get("nutrient");
        var nutrient = Words.Known(id, Nutrients);
        var unit = place.Get("unit");
        return new LawLine(
            nutrient,
            id.Text,
            place.Get("name").Text,
            unit.Text == UnitOf(nutrient) ? unit.Text : throw unit.Fault($"'{unit.Text}' is not the unit of {id.Text}, which is {UnitOf(nutrient)}"),
            (int)PanelRulesFile.Between(place.Get("depth"), 0, 2),
            place.Get("required").Flag,
            RoundingOf(place.Get("rounding"), id.Text),
            place.Find("dailyValue") is { } day ? DailyOf(day) : null);
    }

    private RoundingRule RoundingOf(JsonPlace place, string id) =>
        !place.IsText ? RoundingFile.RuleOf(place, Sources)
        : place.Text == AsPanels && RoundingFile.ById.TryGetValue(id, out var line) ? Panels.ByBasis[Basis].Rounding[line]
        : throw place.Fault($"'{place.Text}' rounds nothing here; write '{AsPanels}' for a line that panel-rounding.json has, or the rule itself");

    private DailyValue DailyOf(JsonPlace place)
    {
        place.Only("value", "percent", "source", "mark");
        var value = place.Get("value");
        return new DailyValue(
            new PanelAmount(value.Number is > 0 and <= MostPerDay ? value.Number : throw value.Fault($"{value.Number} must lie above 0 and up to {MostPerDay}")),
            Words.Known(place.Get("percent"), Percents),
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }

    private static string UnitOf(Nutrient nutrient) => nutrient switch
    {
        Nutrient.EnergyKcal => "kcal",
        Nutrient.EnergyKilojoules => "kJ",
        Nutrient.Cholesterol or Nutrient.Sodium or Nutrient.Calcium or Nutrient.Iron or Nutrient.Potassium => "mg",
        Nutrient.VitaminD => "mcg",
        _ => "g",
    };
}
