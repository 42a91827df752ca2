using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace SwapSolver.Loaves;

/// <summary>A published table of <c>.../Reference/*.csv</c>. Head lines start with <c>#</c> and say <c>source</c>,
/// <c>place</c>, <c>mark</c> and <c>tolerance</c>; then come the names of the columns and the rows.</summary>
public sealed class ReferenceTable
{
    private static readonly ImmutableArray<string> HeadWords = ["source", "place", "mark", "tolerance"];

    private readonly ImmutableDictionary<string, string> head;

    private ReferenceTable(string file, IReadOnlyList<string> lines)
    {
        head = lines.TakeWhile(line => line.StartsWith('#'))
            .Select(line => line[1..].Split(':', 2, StringSplitOptions.TrimEntries))
            .Where(parts => parts.Length == 2)
            .ToImmutableDictionary(parts => parts[0], parts => parts[1], StringComparer.Ordinal);
        if (HeadWords.FirstOrDefault(word => !head.ContainsKey(word)) is { } missing)
        {
            throw new InvalidDataException($"{file} has no head line '# {missing}: ...'");
        }

        var body = lines.Select((text, index) => (Text: text, Line: index + 1))
            .Where(line => line.Text.Length > 0 && line.Text[0] != '#')
            .ToList();
        var columns = Cells(body[0].Text);
        Rows =
        [
            .. body.Skip(1).Select(line =>
            {
                var cells = Cells(line.Text);
                return cells.Length == columns.Length
                    ? new ReferenceRow(this, $"{Path.GetFileName(file)}:{line.Line}", columns.Zip(cells).ToImmutableDictionary(
                        pair => pair.First, pair => pair.Second, StringComparer.Ordinal), line.Text)
                    : throw new InvalidDataException($"{file}, line {line.Line}: {cells.Length} cells under {columns.Length} names");
            }),
        ];
    }

    /// <summary>Where the figures are from, with table or page.</summary>
    public string Source => $"{head["source"]}, {head["place"]}";

    /// <summary>How the figures are known: published, calculated, practice or memory.</summary>
    public string Mark => head["mark"];

    /// <summary>The rows in the order of the file.</summary>
    public ImmutableArray<ReferenceRow> Rows { get; }

    /// <summary>Names of the rows, for a theory.</summary>
    public IEnumerable<string> Names => Rows.Select(row => row.Name);

    /// <summary>The row of a name.</summary>
    public ReferenceRow this[string name] => Rows.Single(row => row.Name == name);

    /// <summary>Reads a table that is copied beside the tests.</summary>
    /// <param name="path">Path below the test project, with forward slashes.</param>
    public static ReferenceTable Read(string path) =>
        new(path, File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, path)));

    private static ImmutableArray<string> Cells(string line)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        var isQuoted = false;
        foreach (var letter in line)
        {
            if (letter == ',' && !isQuoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
                continue;
            }

            isQuoted ^= letter == '"';
            cell.Append(letter);
        }

        cells.Add(cell.ToString());
        return [.. cells.Select(text => text.StartsWith('"') ? text[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : text)];
    }
}

/// <summary>One row of a published table.</summary>
/// <param name="Table">The table that it stands in.</param>
/// <param name="Name">File and line.</param>
/// <param name="Cells">Cells by the name of their column.</param>
/// <param name="Text">The row as it stands in the file.</param>
public sealed record ReferenceRow(
    ReferenceTable Table, string Name, ImmutableDictionary<string, string> Cells, string Text)
{
    /// <summary>The published figure, from the column of that name.</summary>
    public double Published => Number("published");

    /// <summary>How far a figure may lie from it, from the column of that name.</summary>
    public double Tolerance => Number("tolerance");

    /// <summary>How the row's figure is known: its own cell where the table has a column of that name.</summary>
    public string Mark => Cells.GetValueOrDefault("mark", Table.Mark);

    /// <summary>Where the row's figure is from: its own cell where the table has a column of that name.</summary>
    public string Source => Cells.GetValueOrDefault("source", Table.Source);

    /// <summary>A cell as text; empty where the table says nothing.</summary>
    public string this[string column] => Cells[column];

    /// <summary>A cell as a number.</summary>
    public double Number(string column) => double.Parse(Cells[column], CultureInfo.InvariantCulture);

    /// <summary>Whether a figure lies within the tolerance of the published one.</summary>
    public bool Agrees(double figure)
    {
        ReferenceLedger.Note(this, string.Empty, Published, figure, Tolerance);
        return Math.Abs(figure - Published) <= Tolerance;
    }

    /// <summary>What a failed test prints: the figure, the row and its source.</summary>
    public string Against(double figure) =>
        string.Create(CultureInfo.InvariantCulture, $"{figure:0.######} against {Name} '{Text}' ({Mark}: {Source})");
}
