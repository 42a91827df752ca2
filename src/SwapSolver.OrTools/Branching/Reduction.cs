using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Branching;

/// <summary>Reduces a model: every equality names one of its columns by the others, what is fixed becomes a constant, rows that
/// always hold go, and sizes are evened out by powers of two, which no digit is lost by.</summary>
internal sealed class Reduction
{
    /// <summary>A coefficient that is smaller than its row's largest by more than this names no column [1].</summary>
    private const double LeastShare = 1e-3;

    /// <summary>Nothing is counted in larger units than this: how far a row may be passed grows with them.</summary>
    private const double LargestUnit = 1024;

    /// <summary>What is left of two coefficients that cancel is nothing below this, beside the larger of them [1].</summary>
    private const double Cancelled = 1e-13;

    private readonly Model model;
    private readonly double[][] rows;
    private readonly double[] rowLow;
    private readonly double[] rowHigh;
    private readonly double[] low;
    private readonly double[] high;
    private readonly double[] costs;
    private readonly bool[] isGone;
    private readonly List<(int Row, int Column, double Constant)> named = [];
    private double constant;

    private Reduction(Model model)
    {
        this.model = model;
        var columns = model.Columns.Count;
        rows = new double[model.Rows.Count][];
        rowLow = [.. model.Rows.Select(row => row.Low)];
        rowHigh = [.. model.Rows.Select(row => row.High)];
        low = [.. model.Columns.Select(column => column.IsWhole ? Math.Ceiling(column.Low - ReducedModel.Within) : column.Low)];
        high = [.. model.Columns.Select(column => column.IsWhole ? Math.Floor(column.High + ReducedModel.Within) : column.High)];
        costs = [.. model.Columns.Select(column => column.Cost)];
        isGone = new bool[columns];
        for (var index = 0; index < rows.Length; index++)
        {
            var row = rows[index] = new double[columns];
            foreach (var term in model.Rows[index].Terms)
            {
                row[term.Column] += term.Coefficient;
            }
        }
    }

    /// <summary>Reduces a model; null where a whole column has no whole value within its limits.</summary>
    public static ReducedModel? Of(Model model)
    {
        var reduction = new Reduction(model);
        if (reduction.low.Where((least, column) => least > reduction.high[column]).Any())
        {
            return null;
        }

        reduction.Fix();
        reduction.Name();
        reduction.Limit();
        return reduction.Build();
    }

    private void Fix()
    {
        for (var column = 0; column < isGone.Length; column++)
        {
            if (low[column] != high[column])
            {
                continue;
            }

            isGone[column] = true;
            constant += costs[column] * low[column];
            for (var row = 0; row < rows.Length; row++)
            {
                Move(row, rows[row][column] * low[column]);
                rows[row][column] = 0;
            }
        }
    }

    /// <summary>Takes a constant out of a row's sum.</summary>
    private void Move(int row, double amount)
    {
        rowLow[row] -= amount;
        rowHigh[row] -= amount;
    }

    /// <summary>Lets each equality name the column that stands in the fewest rows.</summary>
    private void Name()
    {
        var counts = new int[isGone.Length];
        foreach (var row in rows)
        {
            for (var column = 0; column < row.Length; column++)
            {
                counts[column] += row[column] != 0 ? 1 : 0;
            }
        }

        for (var row = 0; row < rows.Length; row++)
        {
            if (rowLow[row] == rowHigh[row] && ChooseFor(row, counts) is { } column)
            {
                Name(row, column);
            }
        }
    }

    private int? ChooseFor(int row, int[] counts)
    {
        var terms = rows[row];
        var largest = terms.Max(Math.Abs);
        int? choice = null;
        for (var column = 0; column < terms.Length; column++)
        {
            var size = Math.Abs(terms[column]);
            if (size > 0 && size >= LeastShare * largest && !isGone[column] && !model.Columns[column].IsWhole
                && (choice is null || counts[column] < counts[choice.Value]
                    || (counts[column] == counts[choice.Value] && size > Math.Abs(terms[choice.Value]))))
            {
                choice = column;
            }
        }

        return choice;
    }

    /// <summary>The row becomes <c>column = sum of the others + constant</c>, and the sum stands wherever the column stood.</summary>
    private void Name(int row, int column)
    {
        var terms = rows[row];
        var coefficient = terms[column];
        var offset = rowLow[row] / coefficient;
        for (var other = 0; other < terms.Length; other++)
        {
            terms[other] = other == column ? 0 : -terms[other] / coefficient;
        }

        isGone[column] = true;
        (rowLow[row], rowHigh[row]) = (low[column], high[column]);
        Move(row, offset);
        named.Add((row, column, offset));
        constant += costs[column] * offset;
        for (var other = 0; other < terms.Length; other++)
        {
            costs[other] += terms[other] * costs[column];
        }

        costs[column] = 0;
        for (var index = 0; index < rows.Length; index++)
        {
            var factor = rows[index][column];
            if (index == row || factor == 0)
            {
                continue;
            }

            rows[index][column] = 0;
            Move(index, factor * offset);
            var earlier = named.FindIndex(one => one.Row == index);
            if (earlier >= 0)
            {
                named[earlier] = named[earlier] with { Constant = named[earlier].Constant + (factor * offset) };
            }

            for (var other = 0; other < terms.Length; other++)
            {
                var (before, added) = (rows[index][other], factor * terms[other]);
                var sum = before + added;
                rows[index][other] = Math.Abs(sum) <= Cancelled * Math.Max(Math.Abs(before), Math.Abs(added)) ? 0 : sum;
            }
        }
    }

    /// <summary>A column that costs and has no upper limit is given one where it only ever helps its rows: the most that any of
    /// them needs of it, whatever the others do.</summary>
    private void Limit()
    {
        for (var column = 0; column < isGone.Length; column++)
        {
            if (!isGone[column] && double.IsPositiveInfinity(high[column]) && double.IsFinite(low[column]) && costs[column] >= 0)
            {
                var most = Enumerable.Range(0, rows.Length).Select(row => MostNeeded(row, column)).Append(low[column]).Max();
                // More than the last digits of a sum; and a row that needs three and a half eggs needs four.
                var ample = most + (1e-6 * Math.Max(1, Math.Abs(most)));
                high[column] = model.Columns[column].IsWhole ? Math.Ceiling(ample) : ample;
            }
        }
    }

    /// <summary>The most that a row needs of a column; endless where the column does not only help it.</summary>
    private double MostNeeded(int row, int column)
    {
        var coefficient = rows[row][column];
        if (coefficient == 0)
        {
            return double.NegativeInfinity;
        }

        var (helps, side) = coefficient > 0 ? (double.IsPositiveInfinity(rowHigh[row]), rowLow[row]) : (double.IsNegativeInfinity(rowLow[row]), -rowHigh[row]);
        if (!helps)
        {
            return double.PositiveInfinity;
        }

        var sign = Math.Sign(coefficient);
        double least = 0;
        for (var other = 0; other < isGone.Length; other++)
        {
            var entry = other == column ? 0 : sign * rows[row][other];
            if (entry != 0)
            {
                least += entry * (entry > 0 ? low[other] : high[other]);
            }
        }

        return (side - least) / Math.Abs(coefficient);
    }

    private ReducedModel Build()
    {
        int[] kept = [.. Enumerable.Range(0, isGone.Length).Where(column => !isGone[column])];
        double[] units = [.. kept.Select(UnitOf)];
        var restoring = new Restoring([.. low.Select((value, column) => isGone[column] ? value : 0)]) { Kept = kept, Units = units };
        foreach (var (row, column, offset) in named)
        {
            restoring.Add(column, [.. kept.Select((full, place) => rows[row][full] * units[place])], offset);
        }

        var live = Enumerable.Range(0, rows.Length).Where(Binds).ToList();
        double[] sizes = [.. live.Select(row => PowerOfTwo(kept.Select((full, place) => Math.Abs(rows[row][full] * units[place])).DefaultIfEmpty(0).Max()))];
        var width = (kept.Length + 7) / 8 * 8;
        var dense = new double[live.Count * width];
        var (starts, columns, entries) = (new List<int> { 0 }, new List<int>(), new List<double>());
        for (var row = 0; row < live.Count; row++)
        {
            for (var place = 0; place < kept.Length; place++)
            {
                var entry = rows[live[row]][kept[place]] * units[place] / sizes[row];
                if (entry != 0)
                {
                    dense[(row * width) + place] = entry;
                    columns.Add(place);
                    entries.Add(entry);
                }
            }

            starts.Add(columns.Count);
        }

        return new ReducedModel
        {
            Columns = kept.Length,
            Rows = live.Count,
            Dense = dense,
            Width = width,
            Costs = [.. kept.Select((full, place) => costs[full] * units[place]), .. new double[width - kept.Length]],
            Constant = constant,
            Low = [.. kept.Select((full, place) => low[full] / units[place]), .. live.Select((row, place) => rowLow[row] / sizes[place])],
            High = [.. kept.Select((full, place) => high[full] / units[place]), .. live.Select((row, place) => rowHigh[row] / sizes[place])],
            Whole = [.. Enumerable.Range(0, kept.Length).Where(place => model.Columns[kept[place]].IsWhole)],
            RowStarts = [.. starts],
            EntryColumns = [.. columns],
            Entries = [.. entries],
            Restoring = restoring,
        };
    }

    /// <summary>A column of grams is counted in its own room, so that all columns are of one size.</summary>
    private double UnitOf(int column) =>
        model.Columns[column].IsWhole || !double.IsFinite(high[column] - low[column]) ? 1 : PowerOfTwo(Math.Max(Math.Abs(low[column]), Math.Abs(high[column])));

    /// <summary>The next lower power of two, at most <see cref="LargestUnit"/>.</summary>
    private static double PowerOfTwo(double size) => size > 0 ? Math.Min(Math.ScaleB(1, Math.ILogB(size)), LargestUnit) : 1;

    /// <summary>Whether a row holds anything back that the limits of its columns do not.</summary>
    private bool Binds(int row)
    {
        double least = 0, most = 0;
        for (var column = 0; column < isGone.Length; column++)
        {
            var coefficient = rows[row][column];
            if (coefficient != 0)
            {
                least += coefficient * (coefficient > 0 ? low[column] : high[column]);
                most += coefficient * (coefficient > 0 ? high[column] : low[column]);
            }
        }

        if (least >= rowLow[row])
        {
            rowLow[row] = double.NegativeInfinity;
        }

        if (most <= rowHigh[row])
        {
            rowHigh[row] = double.PositiveInfinity;
        }

        return double.IsFinite(rowLow[row]) || double.IsFinite(rowHigh[row]);
    }
}
