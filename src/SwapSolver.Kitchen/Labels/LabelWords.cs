using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What is said around the figures of a label.</summary>
/// <param name="Phrases">The words of cards.</param>
public sealed record LabelWords(Phrases Phrases)
{
    /// <summary>What the figures are for, as 'serving of 1 slice (49 g)'.</summary>
    public string Portion(LabelSheet sheet) => sheet.Law.Portion == LabelPortion.HundredGrams
        ? Phrases.Say("portion-hundred-grams")
        : Phrases.Say(
            sheet.ServingSlices == 1 ? "portion-serving-one" : "portion-serving-more",
            ("count", sheet.ServingSlices.ToString(CultureInfo.InvariantCulture)),
            ("grams", sheet.ServingMass.Value.ToString("0", CultureInfo.InvariantCulture)));

    /// <summary>What a reader of the label must know.</summary>
    public ImmutableArray<string> Notes(Formula formula, LabelSheet sheet)
    {
        var missing = sheet.NotKnown.Select(line => line.Name).ToList();
        return
        [
            .. sheet.Law.Notes,
            .. sheet.Law.ReferenceAmounts.Take(1).Select(amount => Serving(formula, amount)),
            .. missing.Count == 0 ? [] : new[] { Phrases.Say("note-not-known", ("lines", Phrases.List(missing))) },
            .. formula.BakeLoss is null ? new[] { Phrases.Say("note-no-bake-loss") } : [],
            Phrases.Say("note-estimate"),
        ];
    }

    private string Serving(Formula formula, ReferenceAmount amount)
    {
        var (least, most) = amount.ServingOf(formula.BakedMass * (1.0 / formula.Slices));
        var count = least == most ? least.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{least} to {most}");
        return Phrases.Say("note-reference-amount", ("food", amount.Food), ("grams", amount.Amount.Value.ToString("0", CultureInfo.InvariantCulture)), ("count", count));
    }
}
