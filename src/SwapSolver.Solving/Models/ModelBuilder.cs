namespace SwapSolver.Solving.Models;

/// <summary>Collects columns and rows.</summary>
internal sealed class ModelBuilder
{
    private readonly List<Column> columns = [];
    private readonly List<ModelRow> rows = [];

    /// <summary>Adds an unknown and returns its index.</summary>
    public int Column(string name, double low, double high, double cost = 0, bool whole = false)
    {
        columns.Add(new Column(Plain(name), low, high, whole, cost));
        return columns.Count - 1;
    }

    /// <summary>Adds a yes-or-no and returns its index.</summary>
    public int Choice(string name, double cost = 0) => Column(name, 0, 1, cost, whole: true);

    /// <summary>Adds a row and returns its index; terms of one column are added up. An empty row that always holds is kept out
    /// and has none.</summary>
    public int? Row(string name, IEnumerable<Term> terms, double low, double high)
    {
        var summed = terms
            .GroupBy(term => term.Column)
            .Select(group => new Term(group.Key, group.Sum(term => term.Coefficient)))
            .Where(term => term.Coefficient != 0)
            .OrderBy(term => term.Column)
            .ToList();
        if (summed.Count == 0 && low <= 0 && high >= 0)
        {
            return null;
        }

        rows.Add(new ModelRow($"{Plain(name)}_{rows.Count}", summed, low, high));
        return rows.Count - 1;
    }

    /// <summary>The row of an index.</summary>
    public ModelRow this[int index] => rows[index];

    /// <summary>How many rows there are.</summary>
    public int Rows => rows.Count;

    /// <summary>The model so far.</summary>
    public Model Build() => new([.. columns], [.. rows]);

    private static string Plain(string name) => string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '_'));
}
