namespace SwapSolver.OrTools.Branching;

/// <summary>A model without its equalities, its fixed columns and the rows that always hold, brought to one size: what is left
/// to search in. A column that an equality named is the sum of a row now. Unknowns are counted through: first the columns, then
/// the sums of the rows.</summary>
internal sealed class ReducedModel
{
    /// <summary>How far a row of the reduced model may be passed [1]; rows are brought to a size of about 1.</summary>
    public const double Within = 1e-9;

    /// <summary>How many columns.</summary>
    public required int Columns { get; init; }

    /// <summary>How many rows.</summary>
    public required int Rows { get; init; }

    /// <summary>The rows' coefficients, densely, one row after the other, <see cref="Width"/> numbers each.</summary>
    public required double[] Dense { get; init; }

    /// <summary>Numbers in a dense row: the columns, filled up with zeros.</summary>
    public required int Width { get; init; }

    /// <summary>Cost of each column, filled up with zeros.</summary>
    public required double[] Costs { get; init; }

    /// <summary>What every point costs besides.</summary>
    public required double Constant { get; init; }

    /// <summary>Least value of each unknown.</summary>
    public required double[] Low { get; init; }

    /// <summary>Greatest value of each unknown.</summary>
    public required double[] High { get; init; }

    /// <summary>The columns that are to be whole.</summary>
    public required int[] Whole { get; init; }

    /// <summary>Where each row's entries begin in <see cref="EntryColumns"/> and <see cref="Entries"/>, and the end behind them.</summary>
    public required int[] RowStarts { get; init; }

    /// <summary>Columns of the entries that are not zero, row by row.</summary>
    public required int[] EntryColumns { get; init; }

    /// <summary>The entries.</summary>
    public required double[] Entries { get; init; }

    /// <summary>How the full model's columns are read from a point.</summary>
    public required Restoring Restoring { get; init; }

    /// <summary>A bound that no point within the limits goes below, whatever multipliers are given: the least of
    /// <c>costs x</c> is read off <c>(costs - y A) x + y (A x)</c> term by term (Neumaier and Shcherbina 2004). It is computed
    /// from the model itself, so an error of the simplex makes it weaker, and never wrong.</summary>
    /// <param name="costs">Costs of the columns; null for none, and a bound above nothing then proves that no point is there.</param>
    /// <param name="multipliers">One for each row; one that pulls towards an endless side is set to nothing.</param>
    /// <param name="low">Least values.</param>
    /// <param name="high">Greatest values.</param>
    /// <param name="reduced">Room for the reduced costs.</param>
    public double LeastOf(double[]? costs, double[] multipliers, double[] low, double[] high, double[] reduced)
    {
        // Smaller than this is the last digits of a sum, and no reason to look to an endless side.
        const double Dust = 1e-11;
        if (costs is null)
        {
            Array.Clear(reduced);
        }
        else
        {
            Array.Copy(costs, reduced, Columns);
        }

        double least = 0;
        for (var row = 0; row < Rows; row++)
        {
            var multiplier = multipliers[row];
            if (multiplier == 0)
            {
                continue;
            }

            var end = multiplier > 0 ? low[Columns + row] : high[Columns + row];
            if (double.IsInfinity(end))
            {
                multipliers[row] = 0;
                continue;
            }

            least += multiplier * end;
            for (var entry = RowStarts[row]; entry < RowStarts[row + 1]; entry++)
            {
                reduced[EntryColumns[entry]] -= multiplier * Entries[entry];
            }
        }

        for (var column = 0; column < Columns; column++)
        {
            var cost = reduced[column];
            var end = cost > 0 ? low[column] : high[column];
            if (!double.IsInfinity(end))
            {
                least += cost * end;
            }
            else if (Math.Abs(cost) > Dust)
            {
                return double.NegativeInfinity;
            }
        }

        return least;
    }
}
