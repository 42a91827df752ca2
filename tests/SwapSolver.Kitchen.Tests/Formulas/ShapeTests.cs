using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Tests.Formulas;

public sealed class ShapeTests
{
    [Fact]
    public void A_tin_twice_as_long_wide_and_high_holds_eight_times_as_much()
    {
        var small = new Tin(new Millimetres(100), new Millimetres(50), new Millimetres(40));
        var large = new Tin(new Millimetres(200), new Millimetres(100), new Millimetres(80));

        Assert.Equal(8, large.VolumeBy(small));
        Assert.Equal(0.125, small.VolumeBy(large));
    }

    [Fact]
    public void A_loaf_on_a_tray_grows_in_all_its_measures()
    {
        // Eight times the batter of the same shape is twice as long, as wide and as high.
        Assert.Equal(new FreeForm(new Millimetres(400), null), new FreeForm(new Millimetres(200), null).Scaled(8));
        Assert.Equal(240, new FreeForm(null, new Millimetres(120)).Scaled(8).Width!.Value.Value, 1e-9);
    }
}
