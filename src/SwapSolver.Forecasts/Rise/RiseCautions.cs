using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>The cautions of a rise, in the order in which they matter.</summary>
/// <param name="Acidity">What the forecast of acidity goes by.</param>
/// <param name="Practice">What the forecast of the rise goes by.</param>
/// <param name="Phrases">The sentences.</param>
internal sealed record RiseCautions(AcidityPractice Acidity, RisePractice Practice, Phrases Phrases)
{
    private delegate ForecastCaution Sentence(string id, params ReadOnlySpan<(string Gap, string Filling)> fillings);

    /// <summary>The cautions of a forecast that lacks none but them.</summary>
    public ImmutableArray<ForecastCaution> Of(Formula formula, RiseForecast forecast, LeaveningPortions portions, RiseConditions conditions)
    {
        Sentence say = (id, fillings) => new ForecastCaution(id, Phrases.Say(id, fillings));
        return
        [
            .. If(portions.Soda == 0, () => say("rise-no-leavening")),
            .. If(portions.Acid == 0 && portions.Sodas.Any(soda => soda.StaysInCrumb), () => say("rise-no-acid")),
            .. If(
                portions.Acid > 0 && portions.Sodas.Any(soda => soda.StaysInCrumb) && forecast.Neutralised is { } used && used.Value.Value < Practice.NeutralisedFromPercent.Range.Typical,
                () => say("rise-part-neutralised", ("value", Figure(forecast.Neutralised!.Value.Value.Value, "0")), ("low", Figure(forecast.Neutralised!.Value.Low.Value, "0")), ("high", Figure(forecast.Neutralised!.Value.High.Value, "0")))),
            .. If(HasYeast(formula), () => say("rise-yeast")),
            .. If(portions.Soda > 0 && forecast.Acidity is null, () => say("rise-too-dry")),
            .. If(
                forecast.SodaLeftPer100Grams.Typical.Value >= Practice.SodaTastedGPer100G.Range.Typical,
                () => say("rise-soda-left", ("value", Figure(forecast.SodaLeftPer100Grams.Typical.Value, "0.##")), ("limit", Figure(Practice.SodaTastedGPer100G.Range.Typical, "0.##")))),
            .. If(
                forecast.WorkingWindow is { } window && conditions.Bench.Value > window.Value.Value,
                () => say(
                    "rise-waited",
                    ("before", Figure(conditions.Bench.Value, "0.#")),
                    ("value", Figure(forecast.WorkingWindow!.Value.Value.Value, "0.#")),
                    ("count", Figure(forecast.LostOnBench.Value, "0")))),
            .. forecast.Acidity is { } acidity ? OfPh(formula, acidity.Crumb, say) : [],
            .. If(
                portions.Soda > 0 && forecast.LeaveningCut is not null,
                () => say(
                    "rise-altitude",
                    ("value", Figure(conditions.Altitude.Value, "0")),
                    ("count", Figure(forecast.LeaveningCut!.Value.Value.Value, "0")),
                    ("low", Figure(forecast.LeaveningCut!.Value.Low.Value, "0")),
                    ("high", Figure(forecast.LeaveningCut!.Value.High.Value, "0")))),
            .. If(forecast.Acidity is not null, () => say("rise-ph-estimate")),
        ];
    }

    private IEnumerable<ForecastCaution> OfPh(Formula formula, PhRange crumb, Sentence say)
    {
        var (value, low, high) = (("value", Ph(crumb.Value)), ("low", Ph(crumb.Low)), ("high", Ph(crumb.High)));
        if (crumb.Value.Value < Acidity.SourBelowPh.Range.Typical)
        {
            yield return say("rise-sour", value, low, high, ("limit", Figure(Acidity.SourBelowPh.Range.Typical, "0.0")));
        }

        foreach (var colour in new AlkaliColours(Acidity, Phrases).Of(formula, crumb))
        {
            yield return colour;
        }
    }

    private static bool HasYeast(Formula formula) =>
        formula.Lines.Any(line => line.Grams.Value > 0 && line.Ingredient.Role == Role.Yeast);

    private static string Ph(Ph ph) => Figure(ph.Value, "0.0");

    private static string Figure(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static IEnumerable<ForecastCaution> If(bool holds, Func<ForecastCaution> caution) => holds ? [caution()] : [];
}
