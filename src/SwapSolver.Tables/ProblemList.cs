using System.Collections.Immutable;

namespace SwapSolver.Tables;

/// <summary>Collects the problems of a table, so that all are named at once.</summary>
internal sealed class ProblemList
{
    private const int MostLetters = 100;

    private readonly List<RowProblem> problems = [];

    /// <summary>How many there are, those that are not listed too.</summary>
    public int Count { get; private set; }

    /// <summary>The problems in the order of the table, no more than are listed.</summary>
    public ImmutableArray<RowProblem> Listed => [.. problems.OrderBy(problem => problem.Line)];

    /// <summary>Adds a problem.</summary>
    public void Add(int line, string field, string value, string reason, string wayOut)
    {
        Count++;
        if (problems.Count < FoodTable.MostProblems)
        {
            problems.Add(new RowProblem(line, Short(field), Short(value), reason, wayOut));
        }
    }

    /// <summary>A text that is not too long to be shown.</summary>
    private static string Short(string text)
    {
        if (text.Length <= MostLetters)
        {
            return text;
        }

        // A letter of two halves is not cut in two.
        var end = char.IsHighSurrogate(text[MostLetters - 4]) ? MostLetters - 4 : MostLetters - 3;
        return $"{text[..end]}...";
    }
}
