using System.Collections.Immutable;
using System.Numerics;
using System.Numerics.Tensors;

namespace SwapSolver.Forecasts;

/// <summary>The walls between the cells of a loaf, in rows of neighbours, so that several are worked out at once: a bake passes
/// through them a million times.</summary>
internal sealed class WallRows
{
    /// <summary>Resistivity that stands between two fronts [m K/W], both as hot as water boils: any that is not zero.</summary>
    private const double LeastResistivity = 1e-3;

    private readonly double[] way;

    private readonly ImmutableArray<Row> rows;

    /// <summary>Cells that touch nothing between two walls of a row, at most: a wall of no area there costs less than a new row.</summary>
    private const int MostBetween = 4;

    /// <summary>Puts walls in rows.</summary>
    /// <param name="walls">The two cells of each, and area by distance of their middles [m].</param>
    public WallRows(IEnumerable<(int One, int Other, double Way)> walls)
    {
        var ways = new List<double>();
        var found = new List<Row>();
        foreach (var (one, other, open) in walls.OrderBy(wall => wall.Other - wall.One).ThenBy(wall => wall.One))
        {
            if (found.Count > 0 && found[^1] is var last && last.Other - last.One == other - one
                && one - (last.One + last.Count) is >= 0 and <= MostBetween and var between)
            {
                ways.AddRange(Enumerable.Repeat(0.0, between));
                found[^1] = last with { Count = last.Count + between + 1 };
            }
            else
            {
                found.Add(new Row(ways.Count, one, other, 1));
            }

            ways.Add(open);
        }

        (way, rows) = ([.. ways], [.. found]);
        Longest = rows.Select(row => row.Count).DefaultIfEmpty().Max();
    }

    /// <summary>Walls of the longest row.</summary>
    public int Longest { get; }

    /// <summary>Lets heat through every wall.</summary>
    /// <param name="celsius">Temperature of each cell [°C].</param>
    /// <param name="water">Water of each [kg/m3]: the drier of two neighbours lies outward.</param>
    /// <param name="outward">Resistivity of each on the side of the skin [m K/W].</param>
    /// <param name="inward">Resistivity of each on the side of the core [m K/W].</param>
    /// <param name="gain">Takes what each gains [W].</param>
    /// <param name="give">Takes what each could give for each kelvin [W/K].</param>
    /// <param name="flow">Room for the heat of a row's walls.</param>
    /// <param name="exchange">Room for what they let through for each kelvin.</param>
    public void Conduct(double[] celsius, double[] water, double[] outward, double[] inward, double[] gain, double[] give, double[] flow, double[] exchange)
    {
        var least = new Vector<double>(LeastResistivity);
        foreach (var (first, one, other, count) in rows)
        {
            var at = 0;
            for (; at + Vector<double>.Count <= count; at += Vector<double>.Count)
            {
                var (a, b) = (one + at, other + at);
                var (wet, beside) = (new Vector<double>(water, a), new Vector<double>(water, b));
                var resistivity = Vector.ConditionalSelect(Vector.LessThan(beside, wet), new Vector<double>(outward, a), new Vector<double>(inward, a))
                    + Vector.ConditionalSelect(Vector.LessThan(wet, beside), new Vector<double>(outward, b), new Vector<double>(inward, b));
                var through = 2 * new Vector<double>(way, first + at) / Vector.Max(resistivity, least);
                through.CopyTo(exchange, at);
                (through * (new Vector<double>(celsius, b) - new Vector<double>(celsius, a))).CopyTo(flow, at);
            }

            for (; at < count; at++)
            {
                var (a, b) = (one + at, other + at);
                var resistivity = (water[b] < water[a] ? outward[a] : inward[a]) + (water[a] < water[b] ? outward[b] : inward[b]);
                exchange[at] = 2 * way[first + at] / Math.Max(resistivity, LeastResistivity);
                flow[at] = exchange[at] * (celsius[b] - celsius[a]);
            }

            Add(flow, gain, one, count);
            TensorPrimitives.Subtract(gain.AsSpan(other, count), flow.AsSpan(0, count), gain.AsSpan(other, count));
            Add(exchange, give, one, count);
            Add(exchange, give, other, count);
        }

        static void Add(double[] what, double[] to, int from, int count) =>
            TensorPrimitives.Add(to.AsSpan(from, count), what.AsSpan(0, count), to.AsSpan(from, count));
    }

    /// <summary>Walls that lie beside each other, as their cells do.</summary>
    /// <param name="First">Number of the first.</param>
    /// <param name="One">Its one cell.</param>
    /// <param name="Other">Its other cell.</param>
    /// <param name="Count">How many there are.</param>
    private readonly record struct Row(int First, int One, int Other, int Count);
}
