using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Tables.Columns;
using SwapSolver.Tables.Rows;
using SwapSolver.Tables.Text;

namespace SwapSolver.Tables;

/// <summary>Reads tables of foods, a piece at a time: rows that can be true go in, the others come back with the reason.</summary>
/// <param name="foods">How far a table's figure may lie from what is in the bag.</param>
/// <param name="rules">What a row must satisfy.</param>
/// <param name="shipped">The ingredients that are there already, whose ids no row may take, and the allergens.</param>
public sealed class FoodTable(FoodRules foods, TableRules rules, Pantry shipped)
{
    /// <summary>Longest piece that is read [characters].</summary>
    public const int MostLetters = 262_144;

    /// <summary>Most problems that are listed.</summary>
    public const int MostProblems = 1000;

    /// <summary>Highest line number of a piece.</summary>
    public const int MostLine = 100_000_000;

    private readonly FoodReader foodReader = new(foods, rules, shipped);

    private readonly WeightReader weightReader = new(foods);

    /// <summary>How a table is written, told from its first line that is neither blank nor a comment.</summary>
    /// <param name="firstLine">That line.</param>
    public static TableFormat FormatOf(string firstLine)
    {
        var line = firstLine.TrimStart('\uFEFF').Trim();
        if (line.StartsWith('~') || (line.Contains('^', StringComparison.Ordinal) && !line.Contains(',', StringComparison.Ordinal)))
        {
            return TableFormat.UsdaAbbreviated;
        }

        var names = line.ToLowerInvariant().Split(',').Select(name => name.Trim(' ', '"')).ToList();
        return names.Contains(WeightColumns.Measure) && names.Contains(WeightColumns.Grams) ? TableFormat.HouseholdWeights : TableFormat.Foods;
    }

    /// <summary>Reads a piece. The same piece is always read the same way, and the order of its rows changes only the
    /// order of the answer.</summary>
    /// <param name="slice">The piece.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of the first line lies outside 1 to <see cref="MostLine"/>.</exception>
    public TableReading Read(TableSlice slice)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(slice.FirstLine, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(slice.FirstLine, MostLine);
        var problems = new ProblemList();
        if (slice.Text.Length > MostLetters || slice.Header?.Length > TableRecords.MostBytes)
        {
            problems.Add(slice.FirstLine, string.Empty, string.Empty, "the piece is too long", $"send pieces of at most {MostLetters} characters, each of whole lines");
            return new TableReading(slice.Format, [], [], problems.Listed, 0);
        }

        var format = slice.Format ?? FormatOf(slice.Header ?? FirstOf(slice.Text));
        var records = TableRecords.Of(slice.Text, format, slice.FirstLine);
        return HeaderOf(slice, format, records, problems) is { } header
            ? Read(format, header, records, problems)
            : new TableReading(format, [], [], problems.Listed, records.Count);
    }

    /// <summary>The first line that is neither blank nor a comment; empty where there is none.</summary>
    private static string FirstOf(string text)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            var trimmed = line.Trim('\uFEFF').Trim();
            if (trimmed.Length > 0 && trimmed[0] != '#')
            {
                return trimmed.ToString();
            }
        }

        return string.Empty;
    }

    private static Header? HeaderOf(TableSlice slice, TableFormat format, List<TableRecord> records, ProblemList problems)
    {
        if (format == TableFormat.UsdaAbbreviated)
        {
            return Header.Abbreviated;
        }

        var written = slice.Header is { } header ? TableRecords.Of(header, format, 1).FirstOrDefault() : records.FirstOrDefault();
        if (slice.Header is null && records.Count > 0)
        {
            records.RemoveAt(0);
        }

        if (written is null or { Fault: not null })
        {
            problems.Add(
                written?.Line ?? 1, string.Empty, string.Empty, written is null ? "the table has no header" : "the header cannot be read", "begin with the names of the columns, as ndb_no,long_description,water_g");
            return null;
        }

        return Header.Read(written.Fields, format == TableFormat.Foods ? FoodColumns.All : WeightColumns.All, written.Line, problems);
    }

    private TableReading Read(TableFormat format, Header header, List<TableRecord> records, ProblemList problems)
    {
        var rows = ImmutableArray.CreateBuilder<FoodRow>();
        var weights = ImmutableArray.CreateBuilder<WeightRow>();
        foreach (var row in records.Select(record => RowOf(record, header, problems)).OfType<TableRow>())
        {
            if (format == TableFormat.HouseholdWeights && weightReader.Read(row) is { } weight)
            {
                weights.Add(weight);
            }
            else if (format != TableFormat.HouseholdWeights && foodReader.Read(row) is { } food)
            {
                rows.Add(new FoodRow(row.Line, food));
            }
        }

        // Of two rows with one name nobody knows which is meant: neither goes in, whichever stands first.
        var foods = Unique(rows, row => row.Food.Id, row => row.Line, FoodColumns.Id, "give each an id of its own", problems);
        var measures = Unique(
            weights, row => $"{row.FoodId}: {row.Measure.Amount:0.######} {row.Measure.Measure}", row => row.Line, WeightColumns.Measure, "keep one of them", problems);
        return new TableReading(format, foods, measures, problems.Listed, records.Count - foods.Length - measures.Length);
    }

    /// <summary>A record under its header; null with a problem where it does not fit.</summary>
    private static TableRow? RowOf(TableRecord record, Header header, ProblemList problems)
    {
        var (reason, wayOut) = record.Fault switch
        {
            RecordFault.TooLong => ($"the row is longer than {TableRecords.MostBytes} bytes", "look for a quote that is not closed"),
            RecordFault.Quotes => ("the quotes of the row do not fit", "close each quoted field, and write a quote within one twice"),
            _ when record.Fields.Length < header.Length || record.Fields.Skip(header.Length).Any(field => field.Length > 0) =>
                ($"the row has {record.Fields.Length} fields, and the table has {header.Length} columns", "write decimals with a point, put text with a comma in it between quotes, and keep the places of empty fields"),
            _ => (string.Empty, string.Empty),
        };
        if (reason.Length == 0)
        {
            return new TableRow(record.Line, header, record.Fields, problems);
        }

        problems.Add(record.Line, string.Empty, string.Empty, reason, wayOut);
        return null;
    }

    private static ImmutableArray<T> Unique<T>(
        IEnumerable<T> rows, Func<T, string> name, Func<T, int> line, string column, string wayOut, ProblemList problems)
    {
        var groups = rows.GroupBy(name, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
        foreach (var group in groups.Where(group => group.Count > 1))
        {
            for (var place = 0; place < group.Count; place++)
            {
                var other = line(group[place == 0 ? 1 : 0]);
                problems.Add(line(group[place]), column, name(group[place]), $"stands on line {other} too", wayOut);
            }
        }

        return [.. groups.Where(group => group.Count == 1).Select(group => group[0])];
    }
}
