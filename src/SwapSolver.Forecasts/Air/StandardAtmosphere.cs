using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>Air pressure and the boiling point of water by height, in the International Standard Atmosphere.</summary>
public static class StandardAtmosphere
{
    /// <summary>Least and greatest height that is answered [m]: the lowest shore and the highest town, with room to spare.</summary>
    public static readonly Metres Lowest = new(-500), Highest = new(6000);

    /// <summary>Temperature at sea level [K], its fall [K/m] and the exponent g M / (R L) [1]; ISO 2533.</summary>
    private const double SeaLevel = 288.15, Lapse = 0.0065, Exponent = 5.25588;

    /// <summary>Air pressure at a height [Pa].</summary>
    /// <param name="altitude">Height above the sea [m], from <see cref="Lowest"/> to <see cref="Highest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No kitchen lies there.</exception>
    public static Pascals PressureAt(Metres altitude)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(altitude.Value, Lowest.Value, nameof(altitude));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(altitude.Value, Highest.Value, nameof(altitude));
        return new Pascals(Pascals.Atmosphere.Value * Math.Pow(1 - (Lapse * altitude.Value / SeaLevel), Exponent));
    }

    /// <summary>Boiling point of water under the pressure of the air [°C].</summary>
    public static Celsius BoilingPointAt(Pascals pressure) => SaturatedWater.BoilingPointAt(pressure);
}
