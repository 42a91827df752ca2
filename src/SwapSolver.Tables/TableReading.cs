using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;

namespace SwapSolver.Tables;

/// <summary>What a piece of a table says.</summary>
/// <param name="Format">How it is written; null where that could not be told.</param>
/// <param name="Rows">The foods that were let in, in the order of the table; ids are unique.</param>
/// <param name="Weights">The household weights that were let in, in the order of the table.</param>
/// <param name="Problems">Why rows were left out, in the order of the table; at most <see cref="FoodTable.MostProblems"/>.</param>
/// <param name="LeftOut">How many rows were left out, those among them whose problems are no longer listed.</param>
public sealed record TableReading(
    TableFormat? Format, ImmutableArray<FoodRow> Rows, ImmutableArray<WeightRow> Weights, ImmutableArray<RowProblem> Problems, int LeftOut)
{
    /// <summary>The foods that were let in, without their lines.</summary>
    public ImmutableArray<StatedFood> Foods => [.. Rows.Select(row => row.Food)];
}
