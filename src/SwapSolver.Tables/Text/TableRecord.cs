using System.Collections.Immutable;

namespace SwapSolver.Tables.Text;

/// <summary>One row as it is cut into fields.</summary>
/// <param name="Line">Number of its first line in the table.</param>
/// <param name="Fields">The fields, without quotes and blanks around them.</param>
/// <param name="Fault">What is wrong with the cut; null where nothing is.</param>
internal sealed record TableRecord(int Line, ImmutableArray<string> Fields, RecordFault? Fault);
