using BenchmarkDotNet.Attributes;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Benchmarks.Bakes;

/// <summary>One bake in coarse and fine cells: what the time of a finer one costs, beside how far the minutes are off.</summary>
public class BakeCells
{
    /// <summary>Cells in half the width, by the name of the method.</summary>
    internal static readonly IReadOnlyDictionary<string, int> Cells = new Dictionary<string, int>
    {
        [nameof(ForRanges)] = Bake.Coarse,
        [nameof(ForTheTime)] = Bake.Fine,
        [nameof(Finer)] = 12,
        [nameof(Finest)] = 16,
    };

    /// <summary>Loaves by name: 0.8 kg in a tin, 0.9 kg on a tray.</summary>
    public static IEnumerable<string> Names => ["tin", "tray"];

    /// <summary>The loaf.</summary>
    [ParamsSource(nameof(Names))]
    public string Loaf { get; set; } = string.Empty;

    /// <summary>As fine as what a time may be is worked out in.</summary>
    [Benchmark]
    public double ForRanges() => Minutes(Loaf, Bake.Coarse);

    /// <summary>As fine as a time is worked out in.</summary>
    [Benchmark(Baseline = true)]
    public double ForTheTime() => Minutes(Loaf, Bake.Fine);

    /// <summary>Half as fine again.</summary>
    [Benchmark]
    public double Finer() => Minutes(Loaf, Cells[nameof(Finer)]);

    /// <summary>Twice as fine.</summary>
    [Benchmark]
    public double Finest() => Minutes(Loaf, Cells[nameof(Finest)]);

    /// <summary>Minutes of a loaf to 96 °C.</summary>
    internal static double Minutes(string loaf, int cells)
    {
        var model = new BakeModel(TestKitchen.Bakehouse.Bake.Practice, Pascals.Atmosphere, IsColdStart: false, Draws.Typical);
        return model.Run(FormulaOf(loaf), new Celsius(96), Doubts.None(), cells, toSlice: false).Baked!.Value / 60;
    }

    private static Formula FormulaOf(string loaf)
    {
        var (grams, dial) = loaf == "tin" ? (800.0, 175.0) : (900.0, 190.0);
        Shape shape = loaf == "tin" ? new Tin(new Millimetres(190), new Millimetres(100), new Millimetres(75)) : new FreeForm(null, null);
        var walnut = Loaves.Loaf.Walnut;
        return walnut.Scaled(grams / walnut.BatterMass.Value) with { Shape = shape, Oven = new Oven(new Celsius(dial), Fan: false) };
    }
}
