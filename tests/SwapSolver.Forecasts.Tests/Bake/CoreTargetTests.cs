using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class CoreTargetTests
{
    private static double Target(double? asked, double metres, string? without = null)
    {
        var formula = without is null ? Loaf.Walnut : Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines.Where(line => line.Ingredient.Id != without)] };
        var boiling = SaturatedWater.BoilingPointAt(StandardAtmosphere.PressureAt(new Metres(metres)));
        return CoreTarget.Of(asked is { } celsius ? new Celsius(celsius) : null, boiling, formula, BakeKitchen.Practice.Core).Core.Value;
    }

    [Theory]
    [InlineData(null)]
    [InlineData(90.0)]
    [InlineData(96.0)]
    [InlineData(98.0)]
    [InlineData(105.0)]
    public void At_2000_metres_no_target_lies_above_what_water_allows(double? asked)
    {
        // Water boils at 93.3 °C there (ISO 2533 and steam tables): what cannot be had becomes 2 to 6 K less than that.
        var target = Target(asked, 2000);
        Assert.True(target < 93.32, $"{target}");
        if (asked is not 90)
        {
            Assert.InRange(93.32 - target, 2 - 0.1, 6 + 0.1);
        }
    }

    [Theory]
    // 98 °C is out of reach above about 600 m, 96 °C above about 1,200 m (reference notes on bakes, section 4, calculated).
    [InlineData(98, 0, true)]
    [InlineData(98, 500, true)]
    [InlineData(98, 700, false)]
    [InlineData(96, 1000, true)]
    [InlineData(96, 1300, false)]
    public void A_target_is_kept_where_it_can_be_reached(double asked, double metres, bool isKept) =>
        Assert.Equal(isKept, Target(asked, metres) == asked);

    [Fact]
    public void The_usual_target_lies_four_kelvin_below_boiling()
    {
        Assert.Equal(96, Target(null, 0), 0.1);
        Assert.Equal(92.6, Target(null, 1000), 0.1);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(65)]
    [InlineData(70.9)]
    public void Nothing_with_egg_in_it_is_baked_to_less_than_is_safe(double asked)
    {
        Assert.Equal(71, Target(asked, 0));
        Assert.Equal(asked, Target(asked, 0, without: "egg-whole"));
    }

    [Fact]
    public void The_caution_of_every_egg_loaf_says_the_same_figure() => Assert.Contains(
        $"{BakeKitchen.Practice.Core.EggSafeCelsius.Range.Typical:0} °C", TestKitchen.Bakehouse.Phrases.Say("caution-egg"), StringComparison.Ordinal);

    [Fact]
    public void A_bake_that_was_asked_for_too_cool_for_egg_says_so()
    {
        var forecast = BakeKitchen.InTin(800).Bakes(BakeKitchen.AtSea with { Core = new Celsius(65) });
        Assert.Equal(71, forecast.Target.Value);
        Assert.Contains(forecast.Cautions, caution => caution.Id == "bake-egg-raised");
        // Safe is not set: the crumb may still be raw.
        Assert.Contains(forecast.Cautions, caution => caution.Id == "bake-set-low");
        Assert.Contains(forecast.Cautions, caution => caution.Id == "caution-egg");
    }

    [Fact]
    public void At_2000_metres_the_bake_ends_below_the_local_boiling_point()
    {
        var forecast = BakeKitchen.InTin(800).Bakes(BakeKitchen.AtSea with { Altitude = new Metres(2000), Core = new Celsius(98) });
        Assert.InRange(forecast.BoilingPoint.Value - forecast.Target.Value, 1.9, 6.1);
        Assert.All(forecast.Curve, point => Assert.True(point.Core.Value < forecast.BoilingPoint.Value + 1));
        Assert.Contains(forecast.Cautions, caution => caution.Id == "bake-core-lowered");
        // To the same distance from boiling the height alone changes the time by little (the same notes: 48.4 against 50.9 min).
        Assert.InRange(forecast.TimeToCore!.Value.Value.Value / BakeKitchen.InTin(800).MinutesOf(BakeKitchen.AtSea with { Core = new Celsius(97.97) }), 0.85, 1.05);
    }
}
