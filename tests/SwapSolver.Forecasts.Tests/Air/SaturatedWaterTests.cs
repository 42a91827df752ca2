using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

public sealed class SaturatedWaterTests
{
    private const double ZeroCelsius = 273.15;

    [Theory]
    // IAPWS-IF97 release, tables 35 and 36: the check values that every program of region 4 is held to (memory).
    [InlineData(300, 0.353658941e-2)]
    [InlineData(500, 0.263889776e1)]
    [InlineData(600, 0.123443146e2)]
    public void The_vapour_pressure_is_that_of_the_release(double kelvin, double megapascals) =>
        Assert.Equal(1, SaturatedWater.PressureAt(new Celsius(kelvin - ZeroCelsius)).Value / (megapascals * 1e6), 1e-8);

    [Theory]
    [InlineData(0.1, 0.372755919e3)]
    [InlineData(1, 0.453035632e3)]
    [InlineData(10, 0.584149488e3)]
    public void The_boiling_point_is_that_of_the_release(double megapascals, double kelvin) =>
        Assert.Equal(kelvin, SaturatedWater.BoilingPointAt(new Pascals(megapascals * 1e6)).Value + ZeroCelsius, 1e-6);

    [Theory]
    // A maker's steam tables: boiling point [°C] and heat of vaporisation [kJ/kg] at 50, 75, 95 and 100 kPa; 90 °C at 70.18 kPa
    // from a table of a university's course. Published.
    [InlineData(50, 81.3, 2304.8)]
    [InlineData(75, 91.8, 2278.1)]
    [InlineData(95, 98.2, 2261.4)]
    [InlineData(100, 99.6, 2257.6)]
    public void Steam_tables_agree(double kilopascals, double celsius, double latent)
    {
        Assert.Equal(celsius, SaturatedWater.BoilingPointAt(new Pascals(kilopascals * 1000)).Value, 0.05);
        Assert.Equal(1, SaturatedWater.HeatOfVaporisation(celsius) / 1000 / latent, 0.001);
    }

    [Fact]
    public void Water_at_90_degrees_has_70_kilopascals() =>
        Assert.Equal(70_180, SaturatedWater.PressureAt(new Celsius(90)).Value, 10.0);

    [Theory]
    // ISO 2533 by height, and the boiling point under that pressure from IF97; the pressures published (mechanical engineers'
    // handbook: 89.88, 79.50, 70.12 kPa), the boiling points calculated elsewhere.
    [InlineData(0, 101.33, 99.97)]
    [InlineData(1000, 89.88, 96.65)]
    [InlineData(2000, 79.50, 93.32)]
    [InlineData(3000, 70.12, 89.97)]
    public void At_a_height_the_air_is_thinner_and_water_boils_sooner(double metres, double kilopascals, double boils)
    {
        var pressure = StandardAtmosphere.PressureAt(new Metres(metres));
        Assert.Equal(kilopascals, pressure.Value / 1000, 0.05);
        Assert.Equal(boils, SaturatedWater.BoilingPointAt(pressure).Value, 0.1);
    }
}
