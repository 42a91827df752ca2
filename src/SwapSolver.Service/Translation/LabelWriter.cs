using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Service.Translation;

/// <summary>Writes a label in the contract's words.</summary>
internal sealed class LabelWriter(Phrases phrases)
{
    /// <summary>What the label goes by.</summary>
    public V1.Label Write(Formula formula, LabelSheet sheet)
    {
        var law = sheet.Law;
        var written = new V1.Label
        {
            Law = LabelReader.Write(law),
            Place = law.Name,
            Text = law.Text,
            AsOf = law.AsOf,
            Portion = new LabelWords(phrases).Portion(sheet),
            ServingSlices = sheet.ServingSlices,
            ServingGrams = sheet.ServingMass.Value,
            EnergyMethod = sheet.Method.Id,
            EnergyMethodWords = sheet.Method.Name,
            CarbohydrateWords = law.CarbohydrateWords,
        };
        written.Notes.AddRange(new LabelWords(phrases).Notes(formula, sheet));
        return written;
    }

    /// <summary>One line.</summary>
    public V1.LabelLine Write(LabelSheet sheet, LabelFigure figure)
    {
        string Print(PanelAmount? amount) => figure.Print(amount) is { } printed ? sheet.Law.Write(printed) : phrases.Say("not-known");

        var portion = sheet.Law.Portion;
        var written = new V1.LabelLine
        {
            Nutrient = figure.Line.Id,
            Unit = figure.Line.Unit,
            Name = figure.Line.Name,
            Depth = figure.Line.Depth,
            Printed = Print(figure.Per(portion)),
            PrintedPerSlice = Print(figure.PerSlice),
            PrintedPer100G = Print(figure.PerHundredGrams),
        };
        if (figure is { InLoaf: { } loaf, PerSlice: { } slice, PerHundredGrams: { } hundred } && figure.Per(portion) is { } amount)
        {
            (written.Amount, written.PerSlice, written.Per100G, written.PerLoaf) = (amount.Value, slice.Value, hundred.Value, loaf.Value);
        }

        if (figure.DailyShare(portion) is { } share)
        {
            written.PercentDailyValue = (int)Math.Min(share.Value, int.MaxValue);
        }

        return written;
    }
}
