using System.Globalization;

namespace SwapSolver.Loaves;

/// <summary>Notes what the tests hold against published tables, where <c>SWAPSOLVER_LEDGER</c> names a folder: a line a figure, one
/// file a process. <c>tests/references.sh</c> makes <c>tests/REFERENCES.md</c> of them.</summary>
public static class ReferenceLedger
{
    private static readonly Lock Writing = new();

    private static readonly string? Folder = Environment.GetEnvironmentVariable("SWAPSOLVER_LEDGER");

    /// <summary>Notes a figure that is compared.</summary>
    /// <param name="row">The row that it stands in.</param>
    /// <param name="what">What it is of the row, as a column; empty where the row has one figure.</param>
    /// <param name="published">The figure as it is printed.</param>
    /// <param name="found">The figure of the code.</param>
    /// <param name="tolerance">How far apart they may be.</param>
    public static void Note(ReferenceRow row, string what, double published, double found, double tolerance)
    {
        if (Folder is null)
        {
            return;
        }

        var line = string.Join('\t', row.Name, what, Number(published), Number(found), Number(tolerance), row.Mark, row.Source.ReplaceLineEndings(" "), row.Text.ReplaceLineEndings(" "));
        lock (Writing)
        {
            File.AppendAllText(Path.Combine(Folder, $"{System.Reflection.Assembly.GetEntryAssembly()?.GetName().Name}-{Environment.ProcessId}.tsv"), $"{Area}\t{line}\n");
        }
    }

    /// <summary>The project whose tests run.</summary>
    private static string Area => Path.GetFileName(AppContext.BaseDirectory.Split($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}")[0]);

    private static string Number(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);
}
