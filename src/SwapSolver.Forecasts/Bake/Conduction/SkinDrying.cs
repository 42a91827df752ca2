using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>Water that leaves an open skin before it boils, as fast as the air takes it and until the skin is dry.</summary>
/// <param name="Most">What a skin can give before water has to come from deeper [kg/m2]; 0 where none dries.</param>
/// <param name="Pressure">Local pressure of the air [Pa], which is taken as dry.</param>
/// <param name="Activity">Pressure of the steam over the batter by that over pure water [1].</param>
/// <param name="IsOpen">Whether steam can leave a side of the loaf.</param>
internal sealed record SkinDrying(double Most, double Pressure, double Activity, Func<Face, bool> IsOpen)
{
    /// <summary>None at all.</summary>
    public static readonly SkinDrying None = new(0, Pascals.Atmosphere.Value, 1, static _ => false);

    /// <summary>Lewis number of water in air, thermal diffusivity by that of steam [1]; textbooks, from memory.</summary>
    private const double Lewis = 0.85;

    /// <summary>Heat capacity of air [J/(kg K)]; molar masses of air and water [kg/mol]; molar gas constant [J/(mol K)].</summary>
    private const double AirHeat = 1007, AirMolarMass = 0.028965, WaterMolarMass = 0.0180153, GasConstant = 8.314462618;

    private const double ZeroCelsius = 273.15, Step = 1;

    /// <summary>Heat by mass that go the same way [1].</summary>
    private static readonly double OfLewis = Math.Pow(Lewis, 2.0 / 3);

    private const int Hottest = 120;

    /// <summary>Steam over pure water by each degree from 0 °C [kg/m3].</summary>
    private static readonly double[] Steam =
    [
        .. Enumerable.Range(0, Hottest + 2).Select(celsius =>
            SaturatedWater.PressureAt(new Celsius(celsius)).Value * WaterMolarMass / (GasConstant * (celsius + ZeroCelsius))),
    ];

    /// <summary>
    /// Water that a skin gives off, and how that grows with its temperature: mass goes as heat does (Lewis), less as the skin
    /// dries.
    /// </summary>
    /// <param name="skin">Temperature of the skin [°C].</param>
    /// <param name="outside">Temperature of the air [°C].</param>
    /// <param name="convection">Transfer of heat to the air, without radiation [W/(m2 K)].</param>
    /// <param name="dried">What the skin has given off [kg/m2].</param>
    /// <returns>Rate [kg/(m2 s)] and its slope [kg/(m2 s K)].</returns>
    public (double Rate, double Slope) At(double skin, double outside, double convection, double dried)
    {
        if (dried >= Most)
        {
            return (0, 0);
        }

        var place = Math.Clamp(skin, 0, Hottest);
        var index = (int)place;
        var slope = (Steam[index + 1] - Steam[index]) / Step;
        var film = ((skin + outside) / 2) + ZeroCelsius;
        var airHeat = AirHeat * Pressure * AirMolarMass / (GasConstant * film);
        var factor = convection / (airHeat * OfLewis) * Activity * (1 - (dried / Most));
        return (factor * (Steam[index] + (slope * (place - index))), factor * slope);
    }
}
