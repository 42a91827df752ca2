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
        var summed = Summed(terms);
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

    /// <summary>Terms in the order of their columns, one a column, none of nothing. Sorting keeps the order of equals, so that their sum has one last digit.</summary>
    private static List<Term> Summed(IEnumerable<Term> terms)
    {
        var given = terms as Term[] ?? [.. terms];
        var summed = new List<Term>(given.Length);
        foreach (var term in IsInOrder(given) ? given : [.. given.OrderBy(static term => term.Column)])
        {
            if (summed.Count > 0 && summed[^1].Column == term.Column)
            {
                summed[^1] = term with { Coefficient = summed[^1].Coefficient + term.Coefficient };
            }
            else
            {
                summed.Add(term);
            }
        }

        summed.RemoveAll(static term => term.Coefficient == 0);
        return summed;
    }

    private static bool IsInOrder(Term[] terms)
    {
        for (var place = 1; place < terms.Length; place++)
        {
            if (terms[place].Column < terms[place - 1].Column)
            {
                return false;
            }
        }

        return true;
    }

    private static string Plain(string name) => string.Create(name.Length, name, static (plain, given) =>
    {
        for (var place = 0; place < plain.Length; place++)
        {
            plain[place] = char.IsAsciiLetterOrDigit(given[place]) ? given[place] : '_';
        }
    });
}
