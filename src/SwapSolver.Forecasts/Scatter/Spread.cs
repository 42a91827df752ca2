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
    public static Spread Of(Func<Doubts, double> forecast)
    {
        var none = Doubts.None();
        var value = forecast(none);
        var (below, above) = (0.0, 0.0);
        foreach (var doubt in none.Asked)
        {
            var atLow = forecast(Doubts.Moved(doubt, high: false)) - value;
            var atHigh = forecast(Doubts.Moved(doubt, high: true)) - value;
            below += Square(Math.Min(0, Math.Min(atLow, atHigh)));
            above += Square(Math.Max(0, Math.Max(atLow, atHigh)));
        }

        return new Spread(value - Math.Sqrt(below), value, value + Math.Sqrt(above));
    }

    private static double Square(double number) => number * number;
}
