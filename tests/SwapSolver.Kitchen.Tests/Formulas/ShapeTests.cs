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
}
