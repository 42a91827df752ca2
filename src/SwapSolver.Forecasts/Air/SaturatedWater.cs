using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>Water and its steam in balance: IAPWS-IF97, region 4, from 0 to 374 °C.</summary>
public static class SaturatedWater
{
    /// <summary>0 °C [K], by definition.</summary>
    private const double ZeroCelsius = 273.15;

    /// <summary>Pascals of a megapascal.</summary>
    private const double Mega = 1e6;

    /// <summary>Coefficients of the equation of region 4; IAPWS-IF97, table 34, from memory, held by the release's own check values.</summary>
    private const double
        N1 = 0.11670521452767e4, N2 = -0.72421316703206e6, N3 = -0.17073846940092e2, N4 = 0.12020824702470e5, N5 = -0.32325550322333e7,
        N6 = 0.14915108613530e2, N7 = -0.48232657361591e4, N8 = 0.40511340542057e6, N9 = -0.23855557567849, N10 = 0.65017534844798e3;

    /// <summary>Vapour pressure of pure water [Pa].</summary>
    /// <param name="temperature">0 to 374 °C.</param>
    public static Pascals PressureAt(Celsius temperature)
    {
        var kelvin = temperature.Value + ZeroCelsius;
        var theta = kelvin + (N9 / (kelvin - N10));
        var a = (theta * theta) + (N1 * theta) + N2;
        var b = (N3 * theta * theta) + (N4 * theta) + N5;
        var c = (N6 * theta * theta) + (N7 * theta) + N8;
        return new Pascals(Mega * Math.Pow(2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c))), 4));
    }

    /// <summary>Boiling point of pure water [°C].</summary>
    /// <param name="pressure">612 Pa to 22 MPa.</param>
    public static Celsius BoilingPointAt(Pascals pressure)
    {
        var beta = Math.Pow(pressure.Value / Mega, 0.25);
        var e = (beta * beta) + (N3 * beta) + N6;
        var f = (N1 * beta * beta) + (N4 * beta) + N7;
        var g = (N2 * beta * beta) + (N5 * beta) + N8;
        var d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        return new Celsius(((N10 + d - Math.Sqrt(((N10 + d) * (N10 + d)) - (4 * (N9 + (N10 * d))))) / 2) - ZeroCelsius);
    }

    /// <summary>Heat that turns water to steam [J/kg]; a parabola through steam tables from 20 to 110 °C, within 0.1 %.</summary>
    internal static double HeatOfVaporisation(double celsius) => 2.5008e6 - (2.36e3 * celsius) - (0.75 * celsius * celsius);
}
