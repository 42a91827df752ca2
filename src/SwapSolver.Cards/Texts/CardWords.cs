using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Cards.Texts;

/// <summary>Numbers and temperatures as a locale writes them.</summary>
/// <param name="Phrases">The words of cards.</param>
/// <param name="Dials">How ovens are set.</param>
/// <param name="Locale">The locale.</param>
internal sealed partial record CardWords(Phrases Phrases, OvenDials Dials, Locale Locale)
{
    private const double FahrenheitStep = 5;

    /// <summary>A number with the digits of a format, as <c>0.##</c>.</summary>
    public string Number(double figure, string format = "0.##") => Sign(figure.ToString(format, CultureInfo.InvariantCulture));

    /// <summary>A figure that was printed with a point, with the locale's sign.</summary>
    public string Sign(string printed) => printed.Replace(".", Locale.DecimalSign, StringComparison.Ordinal);

    /// <summary>A sentence of cards.</summary>
    public string Say(string id, params ReadOnlySpan<(string Gap, string Filling)> fillings) => Phrases.Say(id, fillings);

    /// <summary>A mass, to the precision of a kitchen scale.</summary>
    public string Grams(Grams grams) => Number(grams.Value, "0.##");

    /// <summary>Whole minutes.</summary>
    public string Minutes(Minutes minutes) => Number(minutes.Value, "0");

    /// <summary>A temperature of food: both scales.</summary>
    public string Food(Celsius celsius) => Pair(
        $"{Number(celsius.Value, "0.#")} °C", $"{Number(celsius.Fahrenheit, "0")} °F");

    /// <summary>The setting of an oven: both scales, with fan, by gas mark where there is one.</summary>
    public string Oven(Oven oven)
    {
        var dial = Dials.WithoutFan(oven.Dial, oven.Fan);
        var fan = Dials.WithFan(dial);
        var celsius = $"{Number(dial.Value, "0")} °C";
        var fahrenheit = $"{Number(Math.Round(dial.Fahrenheit / FahrenheitStep, MidpointRounding.AwayFromZero) * FahrenheitStep, "0")} °F";
        var (first, second) = Locale.IsFahrenheitFirst ? (fahrenheit, celsius) : (celsius, fahrenheit);
        return Dials.GasMarkOf(dial) is { } mark
            ? Say("oven-dials-gas", ("first", first), ("second", second), ("fan", $"{Number(fan.Value, "0")} °C"), ("mark", mark.Mark))
            : Say("oven-dials", ("first", first), ("second", second), ("fan", $"{Number(fan.Value, "0")} °C"));
    }

    /// <summary>A step with each temperature shown by every dial.</summary>
    public string Step(string step) => Temperature().Replace(step, match =>
    {
        var figure = double.Parse(match.Groups["figure"].Value.Replace(',', '.'), CultureInfo.InvariantCulture);
        var celsius = match.Groups["scale"].Value is "F" or "f" ? Celsius.OfFahrenheit(figure) : new Celsius(figure);
        var isFan = match.Groups["fan"].Success;
        return celsius.Value < Dials.LowestOven.Value ? Food(celsius) + match.Groups["fan"].Value : Oven(new Oven(celsius, isFan));
    });

    private string Pair(string celsius, string fahrenheit) =>
        Locale.IsFahrenheitFirst ? $"{fahrenheit} ({celsius})" : $"{celsius} ({fahrenheit})";

    [GeneratedRegex(@"(?<![\d.,])(?<figure>\d{1,3}(?:[.,]\d{1,2})?)\s?(?:°\s?|degrees\s)(?<scale>[CFcf])\b(?<fan>\s\(?fan\)?)?")]
    private static partial Regex Temperature();
}
