using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

namespace SwapSolver.Benchmarks.Bakes;

/// <summary>How far the minutes of a bake lie from what ever finer cells go to.</summary>
internal sealed class MinutesOffColumn : IColumn
{
    /// <inheritdoc/>
    public string Id => nameof(MinutesOffColumn);

    /// <inheritdoc/>
    public string ColumnName => "Minutes off";

    /// <inheritdoc/>
    public bool AlwaysShow => false;

    /// <inheritdoc/>
    public ColumnCategory Category => ColumnCategory.Custom;

    /// <inheritdoc/>
    public int PriorityInCategory => 0;

    /// <inheritdoc/>
    public bool IsNumeric => true;

    /// <inheritdoc/>
    public UnitType UnitType => UnitType.Dimensionless;

    /// <inheritdoc/>
    public string Legend => "Minutes of the bake less the limit of ever finer cells, of the limit";

    /// <inheritdoc/>
    public bool IsAvailable(Summary summary) => summary.BenchmarksCases.Any(IsBake);

    /// <inheritdoc/>
    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

    /// <inheritdoc/>
    public string GetValue(Summary summary, BenchmarkCase benchmarkCase) => GetValue(summary, benchmarkCase, SummaryStyle.Default);

    /// <inheritdoc/>
    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style)
    {
        if (!IsBake(benchmarkCase))
        {
            return "-";
        }

        var loaf = (string)benchmarkCase.Parameters[nameof(BakeCells.Loaf)];
        var (fine, finest) = (BakeCells.Minutes(loaf, 8), BakeCells.Minutes(loaf, 16));
        // The error falls with the square of the size of the cells: a third as much again as from 8 to 16.
        var limit = finest + ((finest - fine) / 3);
        var own = BakeCells.Minutes(loaf, BakeCells.Cells[benchmarkCase.Descriptor.WorkloadMethod.Name]);
        return ((own - limit) / limit).ToString("P1", CultureInfo.InvariantCulture);
    }

    private static bool IsBake(BenchmarkCase measured) => measured.Descriptor.Type == typeof(BakeCells);
}
