using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a batter is handled.</summary>
/// <param name="Altitude">Height of the kitchen above the sea [m], -500 to 6,000.</param>
/// <param name="Bowl">Temperature of the batter [°C].</param>
/// <param name="Mixing">Time of mixing, from wetting the soda [min], above 0.</param>
/// <param name="Bench">Time from mixing to the oven [min], 0 or more.</param>
/// <param name="Oven">Time in the oven until the crumb has set [min], above 0.</param>
public sealed record RiseConditions(Metres Altitude, Celsius Bowl, Minutes Mixing, Minutes Bench, Minutes Oven)
{
    /// <summary>The handling that is assumed where none is said.</summary>
    public static RiseConditions Usual(RisePractice practice, Metres altitude) => new(
        altitude,
        new Celsius(practice.BowlCelsius.Range.Typical),
        new Minutes(practice.MixingMinutes.Range.Typical),
        new Minutes(practice.BenchMinutes.Range.Typical),
        new Minutes(practice.OvenMinutes.Range.Typical));
}
