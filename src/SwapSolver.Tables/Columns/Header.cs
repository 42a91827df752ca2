using System.Collections.Immutable;

namespace SwapSolver.Tables.Columns;

/// <summary>Which field of a row stands in which column.</summary>
/// <param name="Length">How many fields a row has.</param>
/// <param name="Places">Place and printed name of the columns that are read, by our name.</param>
internal sealed record Header(int Length, ImmutableDictionary<string, (int Place, string Printed)> Places)
{
    /// <summary>The fields of the abbreviated file.</summary>
    public static readonly Header Abbreviated = new(
        AbbreviatedColumns.All.Length,
        AbbreviatedColumns.All.Select((column, place) => (column.Printed, column.Ours, Place: place))
            .Where(column => column.Ours is not null)
            .ToImmutableDictionary(column => column.Ours!, column => (column.Place, column.Printed)));

    /// <summary>Reads a header; null where it has problems, which are then added.</summary>
    /// <param name="names">The names as written.</param>
    /// <param name="columns">The columns that are known.</param>
    /// <param name="line">Number of its line.</param>
    /// <param name="problems">Where problems go.</param>
    public static Header? Read(ImmutableArray<string> names, ImmutableArray<Column> columns, int line, ProblemList problems)
    {
        if (names.Length == 1 && names[0].IndexOfAny([';', '\t', '|']) is var place and >= 0)
        {
            problems.Add(line, string.Empty, names[0], $"is cut by {SignOf(names[0][place])}, not by commas", "save the table as CSV with commas between fields and a point in decimals");
            return null;
        }

        var before = problems.Count;
        var known = columns.Select(column => column.Name).ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        var places = ImmutableDictionary.CreateBuilder<string, (int, string)>(StringComparer.OrdinalIgnoreCase);
        // Blank names behind the last are what spreadsheets leave; a field below them that is not blank is found in its row.
        var length = names.Length;
        while (length > 0 && names[length - 1].Length == 0)
        {
            length--;
        }

        for (var index = 0; index < length; index++)
        {
            var name = names[index];
            if (name.Length == 0)
            {
                problems.Add(line, string.Empty, string.Empty, $"column {index + 1} has no name", "name it, or take it out");
            }
            else if (!known.Contains(name))
            {
                problems.Add(line, name, name, "is no column that is known", NearestNames.WayOut(name, known));
            }
            else if (!places.TryAdd(name, (index, name)))
            {
                problems.Add(line, name, name, "stands in the header twice", "keep one of the two columns");
            }
        }

        foreach (var column in columns.Where(column => column.IsRequired && !places.ContainsKey(column.Name)))
        {
            problems.Add(line, column.Name, string.Empty, $"the column {column.Name} is missing", "add it, and write its name in the header exactly so");
        }

        return problems.Count > before ? null : new Header(length, places.ToImmutable());
    }

    /// <summary>The name of a column as the table prints it; ours where the table has none of that kind.</summary>
    public string Printed(string column) => Places.TryGetValue(column, out var found) ? found.Printed : column;

    private static string SignOf(char sign) => sign switch
    {
        ';' => "semicolons",
        '\t' => "tabs",
        _ => "bars",
    };
}
