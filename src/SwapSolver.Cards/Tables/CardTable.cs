using System.Globalization;
using CsvHelper;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Cards.Tables;

/// <summary>Writes the lines and the label of a card as one table of comma-separated values (RFC 4180, UTF-8, a decimal point).</summary>
internal static class CardTable
{
    private static readonly string[] Columns =
        ["part", "id", "name", "unit", "amount", "bakersPercent", "perSlice", "per100g", "perLoaf", "printed", "percentDailyValue"];

    /// <summary>The table.</summary>
    public static string Write(Card card)
    {
        // A name that begins like a spreadsheet's formula is written so that no spreadsheet runs it.
        var settings = new CsvWriterOptions { Injection = CsvInjection.Escape };
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, settings, leaveOpen: true))
        {
            csv.WriteRecord(Columns);
            foreach (var line in card.Lines)
            {
                var name = PlainWords.Of(line.Line.Ingredient.Name);
                csv.WriteRecord(["line", line.Line.Ingredient.Id, name, "g", Figure(line.Line.Grams.Value), Figure(line.BakersPercentage?.Value), Figure(line.Line.Grams.Value / card.Formula.Slices), "", Figure(line.Line.Grams.Value), "", ""]);
            }

            csv.WriteRecord(["batter", "batter", "batter in all", "g", Figure(card.Formula.BatterMass.Value), "", Figure(card.Formula.BatterMass.Value / card.Formula.Slices), "", Figure(card.Formula.BatterMass.Value), "", ""]);
            foreach (var figure in card.Label.Figures)
            {
                csv.WriteRecord(Cells(card.Label.Law, figure));
            }
        }

        return text.ToString();
    }

    private static string[] Cells(LabelLaw law, LabelFigure figure)
    {
        var amount = figure.Per(law.Portion);
        return
        [
            "label", figure.Line.Id, figure.Line.Name, figure.Line.Unit, Figure(amount), "", Figure(figure.PerSlice), Figure(figure.PerHundredGrams), Figure(figure.InLoaf),
            figure.Print(amount) is { } printed ? law.Write(printed) : "", Figure(figure.DailyShare(law.Portion)?.Value),
        ];
    }

    private static string Figure(PanelAmount? amount) => Figure(amount?.Value);

    private static string Figure(double? figure) => figure?.ToString("0.######", CultureInfo.InvariantCulture) ?? string.Empty;
}
