using System.Collections.Immutable;

namespace SwapSolver.Tables.Columns;

/// <summary>The columns of a plain table of household weights.</summary>
internal static class WeightColumns
{
    public const string Amount = "amount";

    public const string Measure = "measure";

    public const string Grams = "grams";

    /// <summary>All columns. A row names its food by number or by id.</summary>
    public static readonly ImmutableArray<Column> All =
    [
        new(FoodColumns.Number), new(FoodColumns.Id), new(Amount, IsRequired: true), new(Measure, IsRequired: true), new(Grams, IsRequired: true),
    ];
}
