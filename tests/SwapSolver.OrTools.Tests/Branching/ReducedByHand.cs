using SwapSolver.OrTools.Branching;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>Models of a few rows as the simplex and the tree see them, so that nothing is reduced away before they are looked at.</summary>
internal static class ReducedByHand
{
    /// <summary>The model of columns with their limits and costs, and of rows with an entry a column and their limits.</summary>
    public static ReducedModel Of((double Low, double High, double Cost)[] columns, params (double[] Entries, double Low, double High)[] rows) => Of(columns, [], rows);

    /// <summary>The same, some columns of which are to be whole.</summary>
    public static ReducedModel Of((double Low, double High, double Cost)[] columns, int[] whole, params (double[] Entries, double Low, double High)[] rows)
    {
        const int Width = 8;
        var width = (columns.Length + Width - 1) / Width * Width;
        return new ReducedModel
        {
            Columns = columns.Length,
            Rows = rows.Length,
            Width = width,
            Dense = [.. rows.SelectMany(row => row.Entries.Concat(new double[width - columns.Length]))],
            Costs = [.. columns.Select(column => column.Cost), .. new double[width - columns.Length]],
            Constant = 0,
            Low = [.. columns.Select(column => column.Low), .. rows.Select(row => row.Low)],
            High = [.. columns.Select(column => column.High), .. rows.Select(row => row.High)],
            Whole = [.. whole],
            RowStarts = [.. Enumerable.Range(0, rows.Length + 1).Select(row => row * columns.Length)],
            EntryColumns = [.. rows.SelectMany(_ => Enumerable.Range(0, columns.Length))],
            Entries = [.. rows.SelectMany(row => row.Entries)],
            Restoring = new Restoring(new double[columns.Length]) { Kept = [.. Enumerable.Range(0, columns.Length)], Units = [.. Enumerable.Repeat(1.0, columns.Length)] },
        };
    }
}
