using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Tests.Measures;

public sealed class PieceFileTests
{
    [Theory]
    // Regulation (EC) No 589/2008: S below 53 g, M 53 to under 63 g, L 63 to under 73 g, XL from 73 g, in the shell.
    [InlineData(62.9, EggSize.MediumEu)]
    [InlineData(63.0, EggSize.LargeEu)]
    [InlineData(72.9, EggSize.LargeEu)]
    [InlineData(73.0, EggSize.ExtraLargeEu)]
    [InlineData(52.9, EggSize.SmallEu)]
    [InlineData(53.0, EggSize.MediumEu)]
    public void A_European_egg_is_of_the_class_that_its_weight_reaches(double grams, EggSize size) =>
        Assert.Equal(size, ShippedMeasures.Tables.Eggs.Of(new Grams(grams), EggRule.Eu)!.Size);

    [Theory]
    // USDA: 24 oz a dozen make large, 27 oz extra large, 21 oz medium; a twelfth of 24 x 28.3495 g is 56.7 g.
    [InlineData(56.7, EggSize.LargeUs)]
    [InlineData(56.6, EggSize.MediumUs)]
    [InlineData(63.8, EggSize.ExtraLargeUs)]
    [InlineData(70.9, EggSize.JumboUs)]
    public void An_American_egg_is_of_the_class_that_its_dozen_reaches(double grams, EggSize size) =>
        Assert.Equal(size, ShippedMeasures.Tables.Eggs.Of(new Grams(grams), EggRule.Us)!.Size);

    [Fact]
    public void An_egg_below_the_smallest_American_class_has_none() =>
        Assert.Null(ShippedMeasures.Tables.Eggs.Of(new Grams(42), EggRule.Us));
}
