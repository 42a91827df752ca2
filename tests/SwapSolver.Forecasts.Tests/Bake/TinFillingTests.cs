using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

public sealed class TinFillingTests
{
    private static readonly Tin Usual = new(new Millimetres(215), new Millimetres(110), new Millimetres(65));

    private static TinFill Fill(double grams, Tin? tin = null) =>
        new TinFilling(BakeKitchen.Practice).Of(BakeKitchen.InTin(grams) with { Shape = tin ?? Usual })!;

    [Fact]
    public void A_height_is_volume_by_base()
    {
        // 775 g at 1 g/mL are 775 mL on 236.5 cm2: 32.8 mm; baked at 0.7 g/mL 1,107 mL: 46.8 mm, 72 % of 1,537 mL.
        var fill = Fill(775);
        Assert.Equal(32.8, fill.Batter.Value.Value, 0.05);
        Assert.Equal(46.8, fill.Baked.Value.Value, 0.05);
        Assert.Equal(72, fill.Full.Value.Value, 0.1);
        Assert.Equal(FillStanding.Fits, fill.Standing);
    }

    [Fact]
    public void What_fills_a_tin_well_fills_it_to_six_sevenths()
    {
        var well = new TinFilling(BakeKitchen.Practice).Well(Usual);
        // 1,537 mL; 85 % of it at 0.7 g/mL.
        Assert.Equal(914.7, well.Value, 0.1);
        Assert.Equal(85, Fill(well.Value).Full.Value.Value, 1e-9);
    }

    [Fact]
    public void Twice_the_batter_runs_over_and_a_larger_tin_is_named()
    {
        var fill = Fill(1550);
        Assert.Equal(FillStanding.Overflows, fill.Standing);
        Assert.NotEmpty(fill.Nearest);
        Assert.All(fill.Nearest, choice => Assert.InRange(choice.Full.Value, 65, 95));
        // The tins that are named hold the loaf: 1,550 g at 0.7 g/mL are 2,214 mL.
        Assert.All(fill.Nearest, choice => Assert.True(choice.Tin.Tin.Length.Value * choice.Tin.Tin.Width.Value * choice.Tin.Tin.Height.Value > 2.214e6));
    }

    [Fact]
    public void Where_only_a_light_loaf_would_run_over_it_may() => Assert.Equal(FillStanding.MayOverflow, Fill(1000).Standing);

    [Fact]
    public void A_loaf_that_runs_over_is_warned_of()
    {
        var tin = BakeKitchen.InTin(1550) with { Shape = Usual };
        Assert.Contains(tin.Bakes().Cautions, caution => caution.Id == "bake-overflows");
        Assert.DoesNotContain(BakeKitchen.InTin(775).Bakes().Cautions, caution => caution.Id is "bake-overflows");
    }

    [Fact]
    public void A_loaf_on_a_tray_fills_no_tin() => Assert.Null(BakeKitchen.NutAndSeed(900).Bakes().Fill);
}
