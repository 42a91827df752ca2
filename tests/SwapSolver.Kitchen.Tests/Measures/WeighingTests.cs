using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>Ounces and grams: what the scale shows, whoever's ounce it is.</summary>
public sealed class WeighingTests
{
    [Theory]
    // A label's ounce is 28 g (us-21-cfr-101-9), the scale's 28.35 g (nist-handbook-44).
    [InlineData(null, null, 28.349523125)]
    [InlineData(MeasureSystem.Metric, null, 28.349523125)]
    [InlineData(MeasureSystem.UsLabelling, null, 28)]
    // What a line says goes before the kitchen it is read in.
    [InlineData(MeasureSystem.UsLabelling, MeasureSystem.UkImperial, 28.349523125)]
    [InlineData(MeasureSystem.UkImperial, MeasureSystem.UsLabelling, 28)]
    public void An_ounce_is_the_ounce_of_the_line_or_else_of_the_kitchen(MeasureSystem? kitchen, MeasureSystem? line, double grams) =>
        Assert.Equal(grams, Larder.Weigh(Larder.Of(Role.Flour), 1, "ounce", kitchen, line).Grams!.Value.Typical.Value, 1e-9);

    [Fact]
    public void Only_of_what_pours_is_it_said_that_ounces_are_no_fluid_ounces()
    {
        Assert.Equal<string>(["ounces by weight, not fluid ounces"], Larder.Weigh(Larder.Of(Role.Liquid), 8, "ounce").Assumed);
        Assert.Empty(Larder.Weigh(Larder.Of(Role.Flour), 8, "ounce").Assumed);
        Assert.Empty(Larder.Weigh(Larder.Of(Role.Liquid), 200, "gram").Assumed);
    }

    [Fact]
    public void The_scale_may_be_off_by_a_gram_and_never_below_nothing()
    {
        var five = Larder.Weigh(Larder.Of(Role.Flour), 5, "gram").Grams!.Value;
        Assert.Equal((4, 5, 6), (five.Low.Value, five.Typical.Value, five.High.Value));
        var trace = Larder.Weigh(Larder.Of(Role.Flour), 0.5, "gram").Grams!.Value;
        Assert.Equal((0, 0.5, 1.5), (trace.Low.Value, trace.Typical.Value, trace.High.Value));
    }

    [Fact]
    public void A_size_of_one_system_goes_before_the_size_of_all()
    {
        // As a tablespoon is: 15 mL, but 20 mL in Australia (measures-au-uk). Where all agree it hangs on no system.
        VolumeUnit Spoon(params (MeasureSystem? System, double Millilitres)[] sizes) =>
            new("spoon", ["spoon"], [.. sizes.Select(size => new VolumeSize(size.System, new(size.Millilitres), "invented", Mark.Practice))]);
        var spoon = Spoon((null, 15), (MeasureSystem.Australian, 20));
        Assert.Equal(20, spoon.In(MeasureSystem.Australian)?.Value);
        Assert.Equal(15, spoon.In(MeasureSystem.Metric)?.Value);
        Assert.True(spoon.DiffersBySystem);
        Assert.Null(spoon.OnlySize);
        Assert.False(Spoon((null, 15)).DiffersBySystem);
        Assert.Equal(15, Spoon((MeasureSystem.Metric, 15), (MeasureSystem.Australian, 15)).OnlySize?.Value);
    }
}
