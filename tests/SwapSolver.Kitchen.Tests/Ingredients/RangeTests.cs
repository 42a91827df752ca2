using CsCheck;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Ingredients;

public sealed class RangeTests
{
    [Theory]
    [InlineData(0, 2)]
    [InlineData(0.25, 3)]
    [InlineData(0.5, 4)]
    [InlineData(0.75, 7)]
    [InlineData(1, 10)]
    public void Half_of_all_bags_lie_below_the_typical_one_and_half_above(double share, double figure) =>
        Assert.Equal(figure, new Range(2, 4, 10).At(share), 12);

    [Fact]
    public void No_bag_lies_beyond_the_ends() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double.Unit).Sample((a, b, c, share) =>
        {
            double[] ends = [.. new[] { a, b, c }.Order()];
            var range = new Range(ends[0], ends[1], ends[2]);

            // One part in 10^12 for the rounding of the way from end to end.
            Assert.InRange(range.At(share), range.Low - 1e-10, range.High + 1e-10);
        });

    [Theory]
    [InlineData(1, 2, 3, true)]
    [InlineData(2, 2, 2, true)]
    [InlineData(3, 2, 4, false)]
    [InlineData(1, 5, 4, false)]
    [InlineData(double.NaN, 2, 3, false)]
    [InlineData(1, double.NaN, 3, false)]
    [InlineData(1, 2, double.PositiveInfinity, false)]
    public void Low_typical_and_high_stand_in_order(double low, double typical, double high, bool isInOrder) =>
        Assert.Equal(isInOrder, new Range(low, typical, high).IsInOrder);
}
