using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

public sealed class BakeVariationTests
{
    private static PercentRange Ratio(BakeForecast forecast, string what) =>
        forecast.Variations.Single(variation => variation.What.StartsWith(what, StringComparison.Ordinal)).Ratio;

    [Fact]
    public void What_is_done_otherwise_is_as_bakes_were_worked_out_apart()
    {
        // Reference notes on bakes, section 8, calculated by a model coded apart over 54 kitchens: twice the mass 1.37 to 1.53, half 0.65 to
        // 0.74, 175 to 160 °C 1.04 to 1.15, 175 to 190 °C 0.89 to 0.96.
        var forecast = BakeKitchen.InTin(800).Bakes();
        Assert.InRange(Ratio(forecast, "twice").Value.Value, 137, 153);
        Assert.InRange(Ratio(forecast, "half").Value.Value, 65, 74);
        Assert.InRange(Ratio(forecast, "oven at 160").Value.Value, 104, 115);
        Assert.InRange(Ratio(forecast, "oven at 190").Value.Value, 89, 96);
        Assert.InRange(Ratio(forecast, "with the fan").Value.Value, 60, 99);
    }

    [Fact]
    public void Each_is_the_bake_that_it_names()
    {
        // In cells of another size, so to a per cent.
        var loaf = BakeKitchen.InTin(800);
        var forecast = loaf.Bakes();
        double Of(Formula other, BakeConditions? conditions = null) => 100 * other.MinutesOf(conditions) / loaf.MinutesOf();

        Assert.Equal(Of(BakeKitchen.InTin(800, 190)), Ratio(forecast, "oven at 190").Value.Value, 1.0);
        Assert.Equal(Of(BakeKitchen.InTin(1600)), Ratio(forecast, "twice").Value.Value, 2.0);
        Assert.Equal(Of(loaf with { Shape = new FreeForm(null, null) }), Ratio(forecast, "one loaf").Value.Value, 2.0);
        Assert.Equal(Of(loaf, BakeKitchen.AtSea with { Altitude = new Metres(1500) }), Ratio(forecast, "at 1500 m").Value.Value, 1.0);
    }

    [Fact]
    public void A_range_holds_its_value_and_grows_with_the_change()
    {
        var forecast = BakeKitchen.InTin(800).Bakes();
        Assert.All(forecast.Variations, variation => Assert.True(variation.Ratio.Low.Value < variation.Ratio.Value.Value && variation.Ratio.Value.Value < variation.Ratio.High.Value));
        double Width(string what) => Ratio(forecast, what).High.Value / Ratio(forecast, what).Low.Value;
        Assert.True(Width("one loaf") > Width("oven at 190"));
    }

    [Fact]
    public void Only_what_can_be_done_is_named()
    {
        Assert.DoesNotContain(BakeKitchen.NutAndSeed(900).Bakes().Variations, variation => variation.What.Contains("tray", StringComparison.Ordinal));
        Assert.Contains(BakeKitchen.NutAndSeed(900).Bakes().Variations, variation => variation.What.StartsWith("in a ", StringComparison.Ordinal));
        Assert.Empty(BakeKitchen.InTin(800, celsius: 80).Bakes().Variations);
        // The hotter dial would pass what ovens have; the cooler one of an oven that hardly bakes never brings it there.
        Assert.DoesNotContain(BakeKitchen.InTin(800, celsius: 345).Bakes().Variations, variation => variation.What.Contains("360", StringComparison.Ordinal));
        Assert.DoesNotContain(BakeKitchen.InTin(800, celsius: 110).Bakes().Variations, variation => variation.What.Contains("95 °C", StringComparison.Ordinal));
        Assert.Contains(BakeKitchen.InTin(800).Bakes(BakeKitchen.AtSea with { Altitude = new Metres(2000) }).Variations, variation => variation.What.StartsWith("at 0 m", StringComparison.Ordinal));
    }
}
