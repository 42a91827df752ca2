using System.Collections.Immutable;

namespace SwapSolver.Tables.Columns;

/// <summary>One row under its header.</summary>
/// <param name="Line">Number of its line in the table.</param>
/// <param name="Header">The header.</param>
/// <param name="Fields">Its fields, as many as the header has.</param>
/// <param name="Problems">Where its problems go.</param>
internal sealed record TableRow(int Line, Header Header, ImmutableArray<string> Fields, ProblemList Problems)
{
    /// <summary>The field of a column; empty where the table has no such column.</summary>
    public string this[string column] => Header.Places.TryGetValue(column, out var found) ? Fields[found.Place] : string.Empty;

    /// <summary>Adds a problem with the field of a column.</summary>
    public void Refuse(string column, string reason, string wayOut) =>
        Problems.Add(Line, Header.Printed(column), this[column], reason, wayOut);

    /// <summary>Adds a problem with the row, seen in a column whose value is not to blame.</summary>
    public void RefuseAll(string column, string reason, string wayOut) =>
        Problems.Add(Line, Header.Printed(column), string.Empty, reason, wayOut);
}
