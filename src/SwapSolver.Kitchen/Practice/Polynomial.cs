namespace SwapSolver.Kitchen.Practice;

/// <summary>A property over the temperature: constant + slope T + curve T², T in degrees Celsius.</summary>
/// <param name="Constant">At 0 °C, in the unit of the property.</param>
/// <param name="Slope">By degree.</param>
/// <param name="Curve">By degree squared.</param>
public sealed record Polynomial(double Constant, double Slope, double Curve)
{
    /// <summary>The property at a temperature, in its unit.</summary>
    /// <param name="celsius">Temperature [°C], within the range that the polynomial is good for.</param>
    public double At(double celsius) => Constant + (celsius * (Slope + (celsius * Curve)));
}
