using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The label of a formula, in a plain table.</summary>
internal static class LabelScreen
{
    private const int IndentEach = 2;

    /// <summary>Shows the lines, what they go by, the statements and the cautions.</summary>
    public static void Show(Screen screen, PrintCardResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        var law = response.LabelLaw;
        screen.Heading($"Label by the law of {law.Place}: {law.Text} ({law.AsOf}).");
        ShowTable(screen, response);
        screen.Item($"Net carbs {Figure(response.Nutrition.PerSlice.HasNetCarbsG ? response.Nutrition.PerSlice.NetCarbsG : null)} g a slice: {response.Nutrition.NetCarbsConvention}.");
        screen.Item($"Energy: {law.EnergyMethodWords}.");
        screen.Item($"{char.ToUpperInvariant(law.CarbohydrateWords[0])}{law.CarbohydrateWords[1..]}.");
        foreach (var note in law.Notes)
        {
            screen.Item(note);
        }

        screen.Part("Allergens and gluten");
        foreach (var statement in response.Statements)
        {
            screen.Item(statement);
        }

        Cautions.Show(screen, response.Cautions);
    }

    /// <summary>The lines of the label.</summary>
    public static void ShowTable(Screen screen, PrintCardResponse response)
    {
        var table = new PlainTable().Words($"for {response.LabelLaw.Portion}").Figures("printed").Figures("% a day").Figures("not rounded").Figures("slice").Figures("100 g").Figures("loaf");
        foreach (var line in response.Label)
        {
            table.Row(
                new string(' ', IndentEach * line.Depth) + line.Name,
                line.HasAmount ? $"{line.Printed} {line.Unit}" : line.Printed,
                line.HasPercentDailyValue ? $"{line.PercentDailyValue} %" : string.Empty,
                Figure(line.HasAmount ? line.Amount : null),
                Figure(line.HasPerSlice ? line.PerSlice : null),
                Figure(line.HasPer100G ? line.Per100G : null),
                Figure(line.HasPerLoaf ? line.PerLoaf : null));
        }

        screen.Table(table);
    }

    private static string Figure(double? amount) => amount?.ToString("0.##", CultureInfo.InvariantCulture) ?? string.Empty;
}
