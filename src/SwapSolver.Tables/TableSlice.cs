namespace SwapSolver.Tables;

/// <summary>A piece of a table.</summary>
/// <param name="Text">Whole lines of it; never cut within a quoted field.</param>
/// <param name="Header">The header of the table, where <paramref name="Text"/> does not begin with it; null where it does.
/// The abbreviated file has none.</param>
/// <param name="FirstLine">Number of the first line of <paramref name="Text"/> in the table, from 1.</param>
/// <param name="Format">How the table is written; null: told from its first line.</param>
public sealed record TableSlice(string Text, string? Header = null, int FirstLine = 1, TableFormat? Format = null);
