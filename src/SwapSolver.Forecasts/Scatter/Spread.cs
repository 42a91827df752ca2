namespace SwapSolver.Forecasts;

/// <summary>
/// A forecast with what it may be: each of its figures is moved alone to either end, and the deviations are added as
/// squares, as of things that vary apart.
/// </summary>
/// <param name="Low">Low end.</param>
/// <param name="Value">The forecast from typical values.</param>
/// <param name="High">High end.</param>
internal readonly record struct Spread(double Low, double Value, double High)
{
    /// <summary>The spread of a forecast.</summary>
    public static Spread Of(Func<Doubts, double> forecast) => Scattered<double>.Of(forecast).Of(static value => value);
}
