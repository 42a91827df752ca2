using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Formulas;

public sealed class MeasuredLinesTests
{
    private static readonly Formula Loaf = Bowl.Of(("almond-meal", 200), ("water", 100), ("salt", 5));

    private static readonly GramRange Cup = new(new Grams(80), new Grams(100), new Grams(140));

    [Theory]
    [InlineData(0, 80)]
    [InlineData(0.25, 90)]
    [InlineData(0.5, 100)]
    [InlineData(0.75, 120)]
    [InlineData(1, 140)]
    public void Half_of_all_cups_lie_below_the_typical_one_and_half_above(double share, double grams) =>
        Assert.Equal(grams, MeasuredLines.Of(Loaf.Lines.Select(line => (line, OfWater(line)))).Filled(Loaf, (_, range) => range.At(share)).MassOf(TestKitchen.Ingredient("water")).Value, 12);

    [Fact]
    public void What_was_weighed_stays_as_it_is()
    {
        var filled = MeasuredLines.Of(Loaf.Lines.Select(line => (line, OfWater(line)))).Filled(Loaf, (_, range) => range.High);
        Assert.Equal([200, 140, 5], filled.Lines.Select(line => line.Grams.Value));
        Assert.Equal(Loaf, MeasuredLines.Of(Loaf.Lines.Select(line => (line, (GramRange?)null))).Filled(Loaf, (_, range) => range.High));
    }

    [Fact]
    public void A_weighed_and_a_measured_line_of_one_ingredient_are_added_up()
    {
        var twice = Bowl.Of(("water", 50), ("water", 100));
        var measured = MeasuredLines.Of([(twice.Lines[0], null), (twice.Lines[1], Cup)]);
        Assert.Equal(new GramRange(new Grams(130), new Grams(150), new Grams(190)), measured.MayWeigh[TestKitchen.Ingredient("water")]);
    }

    private static GramRange? OfWater(Line line) => line.Ingredient.Id == "water" ? Cup : null;
}
