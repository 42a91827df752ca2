using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Data.Learning;
using SwapSolver.Data.Measures;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Records;
using SwapSolver.Service.Records;

namespace SwapSolver.Benchmarks.Growth;

/// <summary>Opening the kitchen's records, by the foods in them, up to what a question may be offered.</summary>
public class ShelfGrowth : IGrowth, IDisposable
{
    /// <summary>The first call of a service: nothing was read before.</summary>
    public const string First = "first call";

    /// <summary>The first call after one food was written down, the writing with it.</summary>
    public const string AfterWrite = "one food written, next call";

    private static readonly SourceKeys Sources = SourceKeys.Read(TestKitchen.Folder);

    private static readonly Kitchen.Measures.MeasureTables Measures = MeasureFiles.Read(TestKitchen.Folder, Sources, TestKitchen.Bakehouse.Pantry);

    private readonly Dictionary<int, (DirectoryInfo Folder, KitchenRecords Records, KitchenShelf Shelf)> kitchens = [];

    private ImmutableArray<StatedFood> few = [];

    private int written;

    /// <summary>Which opening.</summary>
    [Params(First, AfterWrite)]
    public string Opening { get; set; } = string.Empty;

    /// <summary>What kind of foods they are.</summary>
    [Params(FoodsOf.Table, FoodsOf.Like)]
    public string Foods { get; set; } = string.Empty;

    /// <summary>Writes the foods down.</summary>
    [GlobalSetup]
    public void Fill()
    {
        few = FoodsOf.Kind(Foods, 100);
        foreach (var count in new[] { 100, 1_000, 8_000 })
        {
            var folder = Directory.CreateTempSubdirectory("kitchen-records-");
            var records = new KitchenRecords(folder.FullName);
            records.Put(FoodsOf.Kind(Foods, count));
            kitchens[count] = (folder, records, ShelfOver(records));
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
    public int Of100() => Open(100);

    /// <inheritdoc/>
    [Benchmark]
    public int Of1000() => Open(1_000);

    /// <inheritdoc/>
    [Benchmark]
    public int Of8000() => Open(8_000);

    private int Open(int count)
    {
        var (_, records, shelf) = kitchens[count];
        if (Opening == First)
        {
            return ShelfOver(records).Today().Pantry.Offered.Length;
        }

        return records.Put([Another(++written)]) is { Changed: 1 }
            ? shelf.Today().Pantry.Offered.Length
            : throw new InvalidOperationException("nothing was written");
    }

    /// <summary>The first food with the figures of another one, so that each writing is a change.</summary>
    private StatedFood Another(int turn)
    {
        var other = few[1 + (turn % (few.Length - 1))];
        return new StatedFood { Id = few[0].Id, Name = other.Name, Origin = other.Origin, Like = other.Like, Figures = other.Figures };
    }

    private static KitchenShelf ShelfOver(KitchenRecords records) =>
        new(TestKitchen.Bakehouse, Measures, ManyFoods.Making, MeasuringFile.Read(TestKitchen.Folder, Sources), LearningFile.Read(TestKitchen.Folder, Sources), records, new OrToolsSolver());
}
