namespace SwapSolver.Solving.Models;

/// <summary>A mixed-integer linear program, minimised. Plain data: no solver is known here.</summary>
/// <param name="Columns">The unknowns.</param>
/// <param name="Rows">The rows.</param>
public sealed record Model(IReadOnlyList<Column> Columns, IReadOnlyList<ModelRow> Rows)
{
    /// <summary>Largest number that a solver is given: beyond it some of them lie.</summary>
    private const double LargestNumber = 1e12;

    /// <summary>Objective at a point.</summary>
    public double Objective(IReadOnlyList<double> values)
    {
        double sum = 0;
        for (var column = 0; column < Columns.Count; column++)
        {
            sum += Columns[column].Cost * values[column];
        }

        return sum;
    }

    /// <summary>The first row or column that a point breaks; null where it breaks none.</summary>
    /// <param name="values">One value a column.</param>
    /// <param name="tolerance">How far a limit may be passed, relative to the row's largest term and at least this much.</param>
    public string? Broken(IReadOnlyList<double> values, double tolerance = 1e-5)
    {
        for (var index = 0; index < Columns.Count; index++)
        {
            var column = Columns[index];
            var value = values[index];
            if (!double.IsFinite(value)
                || value < column.Low - tolerance
                || value > column.High + tolerance
                || (column.IsWhole && Math.Abs(value - Math.Round(value)) > tolerance))
            {
                return column.Name;
            }
        }

        foreach (var row in Rows)
        {
            double sum = 0, largest = 1;
            foreach (var term in row.Terms)
            {
                var part = term.Coefficient * values[term.Column];
                sum += part;
                largest = Math.Max(largest, Math.Abs(part));
            }

            if (sum < row.Low - (tolerance * largest) || sum > row.High + (tolerance * largest))
            {
                return row.Name;
            }
        }

        return null;
    }

    /// <summary>Refuses what native solvers crash on or answer wrongly: NaN, huge numbers, crossed limits.</summary>
    /// <exception cref="ArgumentException">The model has such a number: a fault of ours.</exception>
    public void Guard()
    {
        foreach (var column in Columns)
        {
            Require(AreLimits(column.Low, column.High) && IsNumber(column.Cost), column.Name);
        }

        foreach (var row in Rows)
        {
            Require(AreLimits(row.Low, row.High), row.Name);
            foreach (var term in row.Terms)
            {
                Require(IsNumber(term.Coefficient) && term.Column >= 0 && term.Column < Columns.Count, row.Name);
            }
        }
    }

    private static bool IsNumber(double value) => double.IsFinite(value) && Math.Abs(value) <= LargestNumber;

    private static bool AreLimits(double low, double high) =>
        (double.IsNegativeInfinity(low) || IsNumber(low)) && (double.IsPositiveInfinity(high) || IsNumber(high)) && low <= high;

    private static void Require(bool holds, string name)
    {
        if (!holds)
        {
            throw new ArgumentException($"'{name}' has a number that no solver may be given");
        }
    }
}
