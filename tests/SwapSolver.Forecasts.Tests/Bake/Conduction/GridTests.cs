using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Forecasts.Tests;

/// <summary>A forecast does not hang on the size of its cells.</summary>
public sealed class GridTests
{
    public static TheoryData<string> Names => ["tin", "tray", "long loaf", "pieces"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Finer_cells_bake_the_same_loaf_in_the_same_time(string name)
    {
        var formula = Loaf(name);
        // The limit of ever finer cells by Richardson's rule, from cells half as large again: the error falls with their square.
        var (fine, finer) = (formula.Run(fineness: Bake.Fine), formula.Run(fineness: 12));
        var limit = finer.Baked!.Value + ((finer.Baked.Value - fine.Baked!.Value) / ((1.5 * 1.5) - 1));

        Assert.InRange(fine.Baked.Value / limit, 0.995, 1.005);
        Assert.InRange(formula.Run(fineness: Bake.Coarse).Baked!.Value / limit, 0.98, 1.02);
        Assert.InRange(fine.LostShare / finer.LostShare, 0.98, 1.02);
    }

    private static Formula Loaf(string name) => name switch
    {
        "tin" => BakeKitchen.InTin(800),
        "tray" => BakeKitchen.NutAndSeed(900),
        "long loaf" => BakeKitchen.NutAndSeed(900) with { Shape = new FreeForm(new(260), new(130)) },
        _ => BakeKitchen.NutAndSeed(900) with { Shape = new Pieces(12) },
    };
}
