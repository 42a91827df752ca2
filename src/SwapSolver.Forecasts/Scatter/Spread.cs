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
    /// <summary>The spread of a forecast of one reading; the same as that of <see cref="Scattered{T}"/>, and nothing is kept.</summary>
    public static Spread Of(Func<Doubts, double> forecast)
    {
        var none = Doubts.None();
        var value = forecast(none);
        var squares = (Below: 0.0, Above: 0.0);
        foreach (var doubt in none.Asked)
        {
            Add(ref squares, forecast(Doubts.Moved(doubt, high: false)) - value, forecast(Doubts.Moved(doubt, high: true)) - value);
        }

        return About(value, squares);
    }

    /// <summary>Adds the deviations of one figure at its ends.</summary>
    internal static void Add(ref (double Below, double Above) squares, double one, double other)
    {
        var (below, above) = (Math.Min(0, Math.Min(one, other)), Math.Max(0, Math.Max(one, other)));
        squares = (squares.Below + (below * below), squares.Above + (above * above));
    }

    /// <summary>The spread about a value.</summary>
    internal static Spread About(double value, (double Below, double Above) squares) =>
        new(value - Math.Sqrt(squares.Below), value, value + Math.Sqrt(squares.Above));
}
