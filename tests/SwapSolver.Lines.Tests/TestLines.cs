using SwapSolver.Data.Files;
using SwapSolver.Data.Measures;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

/// <summary>The reader of lines over the shipped data.</summary>
internal static class TestLines
{
    public static MeasureTables Tables { get; } = MeasureFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder), TestKitchen.Bakehouse.Pantry);

    /// <summary>Lines as cooks write them.</summary>
    public static string[] Written { get; } =
        [.. new[] { "Reference/lines-of-text.csv", "Reference/lines-of-many-styles.csv" }.SelectMany(file => ReferenceTable.Read(file).Rows).Select(row => row["text"])];

    public static IngredientLines Reader { get; } = new(Tables, TestKitchen.Bakehouse.Pantry);
}
