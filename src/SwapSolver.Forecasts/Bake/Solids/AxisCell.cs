using System.Collections.Immutable;

namespace SwapSolver.Forecasts;

/// <summary>A cell beside the axis of a loaf.</summary>
/// <param name="Cell">It.</param>
/// <param name="Beside">Its neighbours away from the axis, one for each direction in which the loaf is the same on both sides.</param>
internal sealed record AxisCell(int Cell, ImmutableArray<int> Beside)
{
    /// <summary>
    /// Temperature on the axis itself [°C]: the middle of a cell lies half a cell beside it, and a curve that is the same on
    /// both sides of the axis falls from it by an eighth of what it falls by to the next middle.
    /// </summary>
    public double On(double[] celsius)
    {
        var here = celsius[Cell];
        var on = here;
        foreach (var beside in Beside)
        {
            on -= (celsius[beside] - here) / 8;
        }

        return on;
    }
}
