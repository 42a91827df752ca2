using MathNet.Numerics.RootFinding;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

public sealed class SkinDryingTests
{
    private static BakePractice Drying(double kilograms)
    {
        var figure = BakeKitchen.Practice.Oven.SkinDryingKgPerM2;
        return BakeKitchen.Practice with { Oven = BakeKitchen.Practice.Oven with { SkinDryingKgPerM2 = figure with { Range = new(kilograms, kilograms, kilograms) } } };
    }

    private static BakeRun Run(double kilograms) =>
        new BakeModel(Drying(kilograms), Pascals.Atmosphere, IsColdStart: false, Kitchen.Ingredients.Draws.Typical)
            .Run(BakeKitchen.NutAndSeed(800), new Celsius(96), Doubts.None(), Bake.Fine, toSlice: false);

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(100)]
    public void A_wet_skin_in_moving_air_stands_near_the_wet_bulb(double air)
    {
        // Handbooks of air conditioning: where air saturates itself with water, heat for heat (1.006 kJ/(kg K) of dry air, 0.622 for the
        // molar masses), it comes to the wet bulb, and a wet skin in moving air stands very near to that, for air and water alone of all
        // pairs. Lewis' rule with 0.85 leaves a depression of some hundredths more.
        double Saturating(double wet)
        {
            var steam = SaturatedWater.PressureAt(new Celsius(wet)).Value;
            return (1006 * (air - wet)) - (0.622 * steam / (Pascals.Atmosphere.Value - steam) * SaturatedWater.HeatOfVaporisation(wet));
        }

        var drying = new SkinDrying(1e9, Pascals.Atmosphere.Value, 1, static _ => true);
        double Giving(double skin) => (20 * (air - skin)) - (drying.At(skin, air, 20, 0).Rate * SaturatedWater.HeatOfVaporisation(skin));
        var (wetBulb, own) = (Brent.FindRoot(Saturating, 0, Math.Min(air, 60), 1e-6), Brent.FindRoot(Giving, 0, Math.Min(air, 60), 1e-6));

        Assert.InRange((air - own) / (air - wetBulb), 1.0, 1.08);
    }

    [Fact]
    public void What_dries_off_lengthens_the_bake_as_worked_out_apart()
    {
        // Reference notes on bakes, section 8, calculated by a model coded apart: 0.1, 0.2, 0.4 kg/m2 off the whole skin add 3, 5 and 11 % of
        // time. Here the foot on its tray gives nothing, a quarter to a third of the skin, so less by as much, and by half a point.
        var none = Run(0).Baked!.Value;
        foreach (var (kilograms, percent) in new[] { (0.1, 3.0), (0.2, 5.0), (0.4, 11.0) })
        {
            Assert.InRange(100 * ((Run(kilograms).Baked!.Value / none) - 1), (percent * 0.5) - 0.5, percent + 0.5);
        }
    }

    [Fact]
    public void More_that_dries_is_more_that_is_lost()
    {
        var (none, some, more) = (Run(0), Run(0.2), Run(0.4));
        Assert.True(none.LostShare < some.LostShare && some.LostShare < more.LostShare);
    }

    [Fact]
    public void A_dry_skin_gives_nothing_more()
    {
        var drying = new SkinDrying(0.2, Pascals.Atmosphere.Value, 1, static _ => true);
        Assert.Equal(0, drying.At(90, 175, 6, 0.2).Rate);
        Assert.True(drying.At(90, 175, 6, 0.1).Rate < drying.At(90, 175, 6, 0).Rate);
        Assert.True(drying.At(90, 175, 6, 0).Rate > drying.At(60, 175, 6, 0).Rate);
    }
}
