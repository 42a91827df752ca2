using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class LeaveningCutTests
{
    /// <summary>A foot [m], by definition.</summary>
    private const double Foot = 0.3048;

    private static readonly ReferenceTable Advice = ReferenceTable.Read("Rise/Reference/high-altitude-baking.csv");

    public static TheoryData<string> Rows => [.. Advice.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_cut_is_the_one_that_extension_services_advise(string name)
    {
        var row = Advice[name];
        var middle = (row.Number("feetFrom") + row.Number("feetTo")) / 2 * Foot;
        var cut = LeaveningCut.At(new Metres(middle), ForecastKitchen.Practice)!.Value;

        Assert.InRange(cut.Value.Value, row.Number("low") - row.Tolerance, row.Number("high") + row.Tolerance);
    }

    [Fact]
    public void At_2000_metres_the_cut_lies_inside_the_published_range()
    {
        // 6,562 feet, between the advice for 5,000 feet (an eighth to a quarter of a teaspoon) and for 7,000 (a quarter).
        var cut = LeaveningCut.At(new Metres(2000), ForecastKitchen.Practice)!.Value;

        Assert.InRange(cut.Value.Value, 12.5, 25);
        Assert.True(cut.Low.Value < cut.Value.Value && cut.Value.Value < cut.High.Value);
    }

    [Fact]
    public void After_the_cut_the_gas_fills_the_room_that_it_fills_at_the_sea()
    {
        var sea = Loaf.Walnut.Rises();
        var high = Loaf.Walnut.Rises(usual => usual with { Altitude = new Metres(2000) });
        var kept = 1 - high.LeaveningCut!.Value.Value.Share;

        Assert.Equal(sea.VolumeAtSetting.Value, high.VolumeAtSetting.Value * kept, 1e-6 * sea.VolumeAtSetting.Value);
        Assert.True(high.Says("rise-altitude"));
        Assert.False(sea.Says("rise-altitude"));
    }

    [Fact]
    public void At_the_sea_nothing_is_cut() => Assert.Null(LeaveningCut.At(new Metres(200), ForecastKitchen.Practice));
}
