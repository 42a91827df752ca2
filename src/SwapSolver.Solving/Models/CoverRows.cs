using System.Collections.Immutable;

namespace SwapSolver.Solving.Models;

/// <summary>Rows that cut off no answer, and tell the solver early how many lines must change: where a band is broken as long
/// as every line stays as it is, the lines that change must make up for what is missing, and none makes up for more than
/// that (the cover of a knapsack with its coefficients cut to the demand; Crowder, Johnson and Padberg 1983, from memory). Without
/// them a solver takes a small part of a yes for each line, and finds out in the branches.</summary>
internal sealed class CoverRows(ModelBuilder builder, ImmutableArray<LineColumn> lines)
{
    /// <summary>Less than this is missing to no band [1]: rows are let out by a tenth of it.</summary>
    private const double Least = 1e-6;

    private readonly Dictionary<int, LineColumn> byColumn = lines.ToDictionary(line => line.Column);

    /// <summary>Adds a row for each band that is broken where every line stays as it is.</summary>
    public void Add()
    {
        // Rows that are added here have choices for columns, so the rows of before are all there is to look at.
        var bands = Enumerable.Range(0, builder.Rows).Select(index => builder[index]).Where(IsOfGrams).ToList();
        foreach (var band in bands)
        {
            Add(band);
        }
    }

    private bool IsOfGrams(ModelRow row) =>
        double.IsFinite(row.Low) && double.IsPositiveInfinity(row.High) && row.Terms.All(term => byColumn.ContainsKey(term.Column));

    private void Add(ModelRow band)
    {
        var missing = band.Low - band.Terms.Sum(term => term.Coefficient * byColumn[term.Column].Start);
        if (missing <= Least)
        {
            return;
        }

        builder.Row(
            $"cover_{band.Name}",
            band.Terms
                .Where(term => byColumn[term.Column].Choice is not null)
                .Select(term => new Term(byColumn[term.Column].Choice!.Value, Math.Min(1, Most(term) / missing)))
                .Where(term => term.Coefficient > 0),
            1,
            double.PositiveInfinity);
    }

    /// <summary>The most that a changed line adds to a row, let out by more than the last digits.</summary>
    private double Most(Term term)
    {
        var line = byColumn[term.Column];
        var added = Math.Max(term.Coefficient * (line.High - line.Start), term.Coefficient * (line.Low - line.Start));
        return added > 0 ? added * (1 + Least) : 0;
    }
}
