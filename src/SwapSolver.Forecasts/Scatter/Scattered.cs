using System.Collections.Immutable;

namespace SwapSolver.Forecasts;

/// <summary>A forecast of many readings with what becomes of it as each of its figures is moved alone to either end.</summary>
/// <param name="Value">From typical values.</param>
/// <param name="Moved">With one figure at its low and at its high end, by the figure's name.</param>
internal sealed record Scattered<T>(T Value, ImmutableSortedDictionary<string, (T AtLow, T AtHigh)> Moved)
{
    /// <summary>Makes the forecast once for every end of every figure.</summary>
    public static Scattered<T> Of(Func<Doubts, T> forecast)
    {
        var none = Doubts.None();
        var value = forecast(none);
        return new Scattered<T>(value, none.Asked.ToImmutableSortedDictionary(
            doubt => doubt,
            doubt => (forecast(Doubts.Moved(doubt, high: false)), forecast(Doubts.Moved(doubt, high: true))),
            StringComparer.Ordinal));
    }

    /// <summary>This forecast beside another: figures of one name move together.</summary>
    public Scattered<(T First, TOther Second)> With<TOther>(Scattered<TOther> other) => new(
        (Value, other.Value),
        Moved.Keys.Union(other.Moved.Keys).ToImmutableSortedDictionary(
            doubt => doubt,
            doubt =>
            {
                var own = Moved.TryGetValue(doubt, out var first) ? first : (AtLow: Value, AtHigh: Value);
                var others = other.Moved.TryGetValue(doubt, out var second) ? second : (AtLow: other.Value, AtHigh: other.Value);
                return ((own.AtLow, others.AtLow), (own.AtHigh, others.AtHigh));
            },
            StringComparer.Ordinal));

    /// <summary>The spread of one reading.</summary>
    /// <param name="reading">What is read of the forecast.</param>
    /// <param name="margin">A deviation that is added as if it were of one more figure, in the reading's unit.</param>
    public Spread Of(Func<T, double> reading, double margin = 0)
    {
        var value = reading(Value);
        var squares = (Below: margin * margin, Above: margin * margin);
        foreach (var (atLow, atHigh) in Moved.Values)
        {
            Spread.Add(ref squares, reading(atLow) - value, reading(atHigh) - value);
        }

        return Spread.About(value, squares);
    }
}
