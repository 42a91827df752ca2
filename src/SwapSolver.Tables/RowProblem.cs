namespace SwapSolver.Tables;

/// <summary>Why a row of a table was left out.</summary>
/// <param name="Line">Number of its line in the table, from 1.</param>
/// <param name="Field">Name of the column as the table writes it; empty where the whole row is meant.</param>
/// <param name="Value">The bad value, as written; empty where there is none.</param>
/// <param name="Reason">What is wrong with it.</param>
/// <param name="WayOut">How to do it right.</param>
public sealed record RowProblem(int Line, string Field, string Value, string Reason, string WayOut)
{
    /// <summary>The problem in one sentence, without its place.</summary>
    public string Sentence => Value.Length == 0 ? $"{Reason}; {WayOut}" : $"'{Value}' {Reason}; {WayOut}";
}
