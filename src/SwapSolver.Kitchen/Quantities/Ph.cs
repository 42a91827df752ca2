namespace SwapSolver.Kitchen.Quantities;

/// <summary>How acid a watery thing is: minus the decimal logarithm of the activity of hydrogen ions [pH], as a meter reads it at 25 °C.</summary>
/// <param name="Value">pH; from about 0 to 14 in a kitchen.</param>
public readonly record struct Ph(double Value);
