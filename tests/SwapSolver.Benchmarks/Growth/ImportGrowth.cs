using BenchmarkDotNet.Attributes;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Loaves;
using SwapSolver.Records;
using SwapSolver.Tables;

namespace SwapSolver.Benchmarks.Growth;

/// <summary>Reading a piece of a table and writing its foods down, by the foods that the kitchen has already. Two tables of
/// the same foods with other figures take turns, so that every row is a change.</summary>
public class ImportGrowth : IGrowth, IDisposable
{
    /// <summary>A piece as a client sends it.</summary>
    public const string Slice = "a slice of 100 rows";

    /// <summary>As many rows as the kitchen has foods.</summary>
    public const string Whole = "the whole table";

    private const int SliceRows = 100;

    private readonly Dictionary<int, (DirectoryInfo Folder, KitchenRecords Records, string[] Tables)> kitchens = [];

    private readonly FoodTable reader = new(
        ManyFoods.Rules, TableRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)), TestKitchen.Bakehouse.Pantry);

    private int turn;

    /// <summary>How much of the table.</summary>
    [Params(Slice, Whole)]
    public string Piece { get; set; } = string.Empty;

    /// <summary>Writes the foods down.</summary>
    [GlobalSetup]
    public void Fill()
    {
        foreach (var count in new[] { 100, 1_000, 8_000 })
        {
            var folder = Directory.CreateTempSubdirectory("kitchen-records-");
            var records = new KitchenRecords(folder.FullName);
            records.Put(ManyFoods.OfTable(count));
            var rows = Piece == Slice ? SliceRows : count;
            kitchens[count] = (folder, records, [ManyFoods.TableText(rows), ManyFoods.TableText(rows, otherLots: true)]);
        }
    }

    /// <summary>Throws the records away.</summary>
    [GlobalCleanup]
    public void Dispose()
    {
        foreach (var (folder, _, _) in kitchens.Values)
        {
            folder.Delete(recursive: true);
        }

        kitchens.Clear();
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    [Benchmark(Baseline = true)]
    public int Of100() => Import(100);

    /// <inheritdoc/>
    [Benchmark]
    public int Of1000() => Import(1_000);

    /// <inheritdoc/>
    [Benchmark]
    public int Of8000() => Import(8_000);

    private int Import(int count)
    {
        var (_, records, tables) = kitchens[count];
        var reading = reader.Read(new TableSlice(tables[turn++ % tables.Length]));
        var done = records.Put(reading.Foods);
        return reading.Foods.Length > 0 ? done.Added + done.Changed : throw new InvalidOperationException("nothing was let in");
    }
}
