namespace SwapSolver.Kitchen.Quantities;

/// <summary>A temperature [°C].</summary>
/// <param name="Value">Degrees Celsius.</param>
public readonly record struct Celsius(double Value)
{
    /// <summary>The same in Fahrenheit [°F], by its definition.</summary>
    public double Fahrenheit => (Value * 9 / 5) + 32;

    /// <summary>The temperature of so many degrees Fahrenheit.</summary>
    /// <param name="fahrenheit">Degrees [°F].</param>
    public static Celsius OfFahrenheit(double fahrenheit) => new((fahrenheit - 32) * 5 / 9);
}
