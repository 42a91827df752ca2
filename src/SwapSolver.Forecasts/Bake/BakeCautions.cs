using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>The cautions of a bake, in the order in which they matter.</summary>
/// <param name="Practice">What the forecast goes by.</param>
/// <param name="Phrases">The sentences.</param>
internal sealed record BakeCautions(BakePractice Practice, Phrases Phrases)
{
    /// <summary>A kitchen whose heat goes in so much slower or faster than handbooks expect has something else to it [%].</summary>
    private const double OddPaceBelow = 50, OddPaceAbove = 200;

    /// <summary>From this height on the answer says what it does to the target [m].</summary>
    private const double HighKitchen = 300;

    private delegate ForecastCaution Sentence(string id, params ReadOnlySpan<(string Gap, string Filling)> fillings);

    /// <summary>The cautions of a forecast that lacks none but them.</summary>
    public ImmutableArray<ForecastCaution> Of(Formula formula, BakeConditions conditions, CoreTarget target, BakeForecast forecast)
    {
        Sentence say = (id, fillings) => new ForecastCaution(id, Phrases.Say(id, fillings));
        var asked = ("before", Figure(conditions.Core?.Value ?? 0, "0.#"));
        var boiling = ("limit", Figure(forecast.BoilingPoint.Value, "0.0"));
        var core = ("value", Figure(forecast.Target.Value, "0.0"));
        var height = ("high", Figure(conditions.Altitude.Value, "0"));
        var below = Practice.Core.BelowBoilingKelvin.Range;
        var isNear = forecast.Target.Value > forecast.BoilingPoint.Value - below.Low;
        return
        [
            .. If(forecast.TimeToCore is null, () => say("bake-not-reached", core)),
            .. If(target.IsRaised, () => say("bake-egg-raised", asked, core)),
            .. If(CoreTarget.HasEgg(formula), () => say("caution-egg")),
            .. If(target.IsLowered, () => say("bake-core-lowered", asked, boiling, core, height)),
            .. If(conditions.Core is null && conditions.Altitude.Value >= HighKitchen, () => say("bake-altitude", boiling, core, height)),
            .. If(forecast.Target.Value < Practice.Core.SetCelsius.Range.Typical, () => say("bake-set-low", core, ("limit", Figure(Practice.Core.SetCelsius.Range.Typical, "0")))),
            .. If(isNear, () => say("bake-near-boiling", core, boiling)),
            .. OfFill(formula, forecast.Fill, say),
            .. If(forecast.Pace is null, () => say("bake-no-anchor")),
            .. If(
                forecast.Pace is { Value: < OddPaceBelow or > OddPaceAbove },
                () => say("bake-odd-anchor", ("value", Figure(forecast.Pace!.Value.Value, "0")))),
            .. If(formula.Oven is null, () => say("bake-oven-assumed", ("value", Figure(Practice.Oven.DialCelsius.Range.Typical, "0")))),
            .. If(formula.Shape is null, () => say("bake-shape-assumed")),
            .. If(
                forecast.CoolToSlice is not null && formula.Lines.Any(line => line.Grams.Value > 0 && line.Ingredient.RangeOf(Fact.GelStrength) is { Typical: > 0 }),
                () => say("bake-gel-sets-cold", ("value", Figure(forecast.SliceAt.Value, "0")))),
            say("bake-probe-decides"),
        ];
    }

    private IEnumerable<ForecastCaution> OfFill(Formula formula, TinFill? fill, Sentence say)
    {
        if (fill is null || fill.Standing == FillStanding.Fits)
        {
            return [];
        }

        var id = fill.Standing == FillStanding.Overflows ? "bake-overflows" : "bake-may-overflow";
        var tins = fill.Nearest.Length > 0 ? Kitchen.Wording.Phrases.List(fill.Nearest.Select(choice => choice.Tin.Name)) : Phrases.Say("bake-larger-tin");
        return [say(id, ("value", Figure(fill.Baked.Value.Value, "0")), ("high", Figure(fill.Baked.High.Value, "0")), ("limit", Figure(((Tin)formula.Shape!).Height.Value, "0")), ("to", tins))];
    }

    private static string Figure(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static IEnumerable<ForecastCaution> If(bool holds, Func<ForecastCaution> caution) => holds ? [caution()] : [];
}
