using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>The colours that alkali brings out in a crumb, by its forecast pH: sunflower green, psyllium violet, cocoa red-brown.</summary>
/// <param name="Practice">From which pH each shows.</param>
/// <param name="Phrases">The sentences.</param>
public sealed record AlkaliColours(AcidityPractice Practice, Phrases Phrases)
{
    /// <summary>The pH below which no colour of a formula shows for certain; null where it holds nothing whose colour hangs on the pH.</summary>
    /// <param name="formula">The formula.</param>
    public Ph? NoneBelow(Formula formula)
    {
        Ph? least = null;
        foreach (var line in formula.Lines)
        {
            foreach (var behaviour in line.Ingredient.Behaviours)
            {
                if (Practice.ColoursFromPh.TryGetValue(behaviour.Kind, out var from) && !(least?.Value <= from.Range.Low))
                {
                    least = new Ph(from.Range.Low);
                }
            }
        }

        return least;
    }

    /// <summary>The cautions: one for each colour that shows, or may show.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="crumb">pH of its crumb.</param>
    public IEnumerable<ForecastCaution> Of(Formula formula, PhRange crumb)
    {
        foreach (var ingredient in formula.Lines.Where(line => line.Grams.Value > 0).Select(line => line.Ingredient).Distinct())
        {
            foreach (var behaviour in ingredient.Behaviours)
            {
                // Where it shows is no better known than the pH: the low end of the one against the high end of the other.
                if (Practice.ColoursFromPh.TryGetValue(behaviour.Kind, out var from) && crumb.High.Value >= from.Range.Low)
                {
                    var id = crumb.Value.Value >= from.Range.Typical ? "rise-colour" : "rise-colour-perhaps";
                    yield return new ForecastCaution(id, Phrases.Say(
                        id,
                        ("ingredient", ingredient.Name),
                        ("value", Figure(crumb.Value.Value)),
                        ("low", Figure(crumb.Low.Value)),
                        ("high", Figure(crumb.High.Value)),
                        ("limit", Figure(crumb.Value.Value >= from.Range.Typical ? from.Range.Typical : from.Range.Low)),
                        ("caution", behaviour.Note)));
                }
            }
        }
    }

    private static string Figure(double ph) => ph.ToString("0.0", CultureInfo.InvariantCulture);
}
