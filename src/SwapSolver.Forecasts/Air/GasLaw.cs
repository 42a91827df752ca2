using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The volume of a gas that is dry and ideal.</summary>
public static class GasLaw
{
    /// <summary>Molar gas constant [J/(mol K)], by definition of the SI.</summary>
    private const double GasConstant = 8.314462618;

    /// <summary>0 °C [K], by definition.</summary>
    private const double ZeroCelsius = 273.15;

    /// <summary>Temperature of a bowl that is not said [°C].</summary>
    private static readonly Celsius Room = new(25);

    /// <summary>Gas in a litre at 25 °C [mmol].</summary>
    /// <param name="pressure">Its pressure [Pa], above 0.</param>
    public static Millimoles AmountIn(Pascals pressure) => new(1000 / VolumeOf(new Millimoles(1), Room, pressure).Value);

    /// <summary>Volume of so much gas [mL]; steam would come on top.</summary>
    /// <param name="amount">How much [mmol].</param>
    /// <param name="temperature">Its temperature [°C].</param>
    /// <param name="pressure">Its pressure [Pa], above 0.</param>
    public static Millilitres VolumeOf(Millimoles amount, Celsius temperature, Pascals pressure) =>
        // mmol to mol and m3 to mL: a thousandth times a million.
        new(amount.Value * GasConstant * (temperature.Value + ZeroCelsius) / pressure.Value * 1000);
}
