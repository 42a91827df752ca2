using CsCheck;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Foods;

public sealed class SpreadTests
{
    [Theory]
    [InlineData(50, 40, 60)]
    [InlineData(0, 0, 1)]
    [InlineData(2, 1, 3)]
    [InlineData(95, 76, 100)]
    [InlineData(100, 80, 100)]
    public void A_figure_lies_a_share_of_itself_either_way_and_never_below_nothing(double figure, double low, double high) =>
        Assert.Equal(new Range(low, figure, high), new Spread(0.2, 1, "invented").Around(figure, 100));

    [Theory]
    [InlineData(10, 8, 12)]
    [InlineData(88, 86.8, 89.2)]
    [InlineData(100, 99.5, 100)]
    public void The_water_of_a_wet_food_is_as_sure_as_its_solids(double figure, double low, double high)
    {
        var range = new Spread(0.2, 0.5, "invented") { OfRest = new Percent(10) }.Around(figure, 100);

        Assert.Equal((low, figure, high), (Math.Round(range.Low, 9), range.Typical, Math.Round(range.High, 9)));
    }

    [Fact]
    public void The_figure_itself_is_kept_to_the_digit() => Gen.Double[0, 100].Sample(figure =>
    {
        foreach (var (fact, spread) in Shelf.Rules.Spreads)
        {
            var made = spread.Of(fact, figure, "invented");
            Assert.Equal(figure, made.Range.Typical);
            Assert.True(made.Range.IsInOrder && made.Range.Low >= 0 && made.Range.High <= fact.Most);
            Assert.Equal((Mark.Published, "invented", spread.Source), (made.Mark, made.Source, made.RangeSource));
        }
    });
}
