using System.Collections.Immutable;
using System.Numerics;

namespace SwapSolver.Forecasts;

/// <summary>The walls between the cells of a loaf, in rows of neighbours, so that several are worked out at once: a bake passes
/// through them a million times.</summary>
internal sealed class WallRows
{
    /// <summary>Resistivity that stands between two fronts [m K/W], both as hot as water boils: any that is not zero.</summary>
    private const double LeastResistivity = 1e-3;

    private readonly double[] way;

    private readonly ImmutableArray<Row> rows;

    /// <summary>Puts walls in rows.</summary>
    /// <param name="walls">The two cells of each, and area by distance of their middles [m].</param>
    public WallRows(IEnumerable<(int One, int Other, double Way)> walls)
    {
        var inOrder = walls.OrderBy(wall => wall.Other - wall.One).ThenBy(wall => wall.One).ToList();
        way = [.. inOrder.Select(wall => wall.Way)];
        var found = ImmutableArray.CreateBuilder<Row>();
        for (var first = 0; first < inOrder.Count;)
        {
            var count = 1;
            while (first + count < inOrder.Count
                && inOrder[first + count].One == inOrder[first].One + count
                && inOrder[first + count].Other == inOrder[first].Other + count)
            {
                count++;
            }

            found.Add(new Row(first, inOrder[first].One, inOrder[first].Other, count));
            first += count;
        }

        rows = found.ToImmutable();
    }

    /// <summary>Lets heat through every wall.</summary>
    /// <param name="celsius">Temperature of each cell [°C].</param>
    /// <param name="water">Water of each [kg/m3]: the drier of two neighbours lies outward.</param>
    /// <param name="outward">Resistivity of each on the side of the skin [m K/W].</param>
    /// <param name="inward">Resistivity of each on the side of the core [m K/W].</param>
    /// <param name="gain">Takes what each gains [W].</param>
    /// <param name="give">Takes what each could give for each kelvin [W/K].</param>
    public void Conduct(double[] celsius, double[] water, double[] outward, double[] inward, double[] gain, double[] give)
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
                var exchange = 2 * new Vector<double>(way, first + at) / Vector.Max(resistivity, least);
                var flow = exchange * (new Vector<double>(celsius, b) - new Vector<double>(celsius, a));
                // One after the other: the two may be the same cells, one further on.
                (new Vector<double>(gain, a) + flow).CopyTo(gain, a);
                (new Vector<double>(gain, b) - flow).CopyTo(gain, b);
                (new Vector<double>(give, a) + exchange).CopyTo(give, a);
                (new Vector<double>(give, b) + exchange).CopyTo(give, b);
            }

            for (; at < count; at++)
            {
                var (a, b) = (one + at, other + at);
                var resistivity = (water[b] < water[a] ? outward[a] : inward[a]) + (water[a] < water[b] ? outward[b] : inward[b]);
                var exchange = 2 * way[first + at] / Math.Max(resistivity, LeastResistivity);
                var flow = exchange * (celsius[b] - celsius[a]);
                gain[a] += flow;
                gain[b] -= flow;
                give[a] += exchange;
                give[b] += exchange;
            }
        }
    }

    /// <summary>Walls that lie beside each other, as their cells do.</summary>
    /// <param name="First">Number of the first.</param>
    /// <param name="One">Its one cell.</param>
    /// <param name="Other">Its other cell.</param>
    /// <param name="Count">How many there are.</param>
    private readonly record struct Row(int First, int One, int Other, int Count);
}
