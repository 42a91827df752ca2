using System.Globalization;
using System.Text;

namespace SwapSolver.Solving.Models;

/// <summary>A model in the free MPS text, so that anyone can check it with any solver. Numbers carry every digit.</summary>
public static class MpsText
{
    /// <summary>Writes the model.</summary>
    public static string Of(Model model)
    {
        var text = new StringBuilder("NAME swapsolver FREE\nROWS\n N cost\n");
        foreach (var row in model.Rows)
        {
            text.Append(CultureInfo.InvariantCulture, $" {Kind(row)} {row.Name}\n");
        }

        AppendColumns(text, model);
        text.Append("RHS\n");
        foreach (var row in model.Rows)
        {
            var side = double.IsNegativeInfinity(row.Low) ? row.High : row.Low;
            if (double.IsFinite(side) && side != 0)
            {
                text.Append(CultureInfo.InvariantCulture, $" rhs {row.Name} {side:R}\n");
            }
        }

        text.Append("RANGES\n");
        foreach (var row in model.Rows.Where(row => Kind(row) == 'G' && double.IsFinite(row.High)))
        {
            text.Append(CultureInfo.InvariantCulture, $" rng {row.Name} {row.High - row.Low:R}\n");
        }

        AppendBounds(text, model);
        return text.Append("ENDATA\n").ToString();
    }

    private static char Kind(ModelRow row) =>
        row.Low == row.High ? 'E'
        : double.IsFinite(row.Low) ? 'G'
        : double.IsFinite(row.High) ? 'L'
        : 'N';

    private static void AppendColumns(StringBuilder text, Model model)
    {
        text.Append("COLUMNS\n");
        var termsByColumn = model.Rows
            .SelectMany(row => row.Terms.Select(term => (term.Column, Row: row.Name, term.Coefficient)))
            .ToLookup(entry => entry.Column);
        var whole = false;
        for (var index = 0; index < model.Columns.Count; index++)
        {
            var column = model.Columns[index];
            if (column.IsWhole != whole)
            {
                whole = column.IsWhole;
                text.Append(CultureInfo.InvariantCulture, $" marker{index} 'MARKER' {(whole ? "'INTORG'" : "'INTEND'")}\n");
            }

            // A column must stand here to be known below; at no cost it is named only where no row names it.
            if (column.Cost != 0 || !termsByColumn.Contains(index))
            {
                text.Append(CultureInfo.InvariantCulture, $" {column.Name} cost {column.Cost:R}\n");
            }

            foreach (var (_, row, coefficient) in termsByColumn[index])
            {
                text.Append(CultureInfo.InvariantCulture, $" {column.Name} {row} {coefficient:R}\n");
            }
        }

        if (whole)
        {
            text.Append(" markerend 'MARKER' 'INTEND'\n");
        }
    }

    private static void AppendBounds(StringBuilder text, Model model)
    {
        text.Append("BOUNDS\n");
        foreach (var column in model.Columns)
        {
            text.Append(double.IsNegativeInfinity(column.Low)
                ? $" MI bnd {column.Name}\n"
                : string.Create(CultureInfo.InvariantCulture, $" LO bnd {column.Name} {column.Low:R}\n"));
            text.Append(double.IsPositiveInfinity(column.High)
                ? $" PL bnd {column.Name}\n"
                : string.Create(CultureInfo.InvariantCulture, $" UP bnd {column.Name} {column.High:R}\n"));
        }
    }
}
