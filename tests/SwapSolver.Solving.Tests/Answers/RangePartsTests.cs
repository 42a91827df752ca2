using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class RangePartsTests
{
    [Fact]
    public void Eight_kitchens_of_eight_flours_stand_one_in_each_part()
    {
        var parts = new RangeParts([0.95, 0.80, 0.70, 0.60, 0.40, 0.30, 0.20, 0.05]);
        var all = RangeParts.Chosen(Enumerable.Repeat(true, 8).ToArray());
        Assert.All(Enumerable.Range(0, RangeParts.Count), part => Assert.Equal(1, parts.In(part, all)));
    }

    [Fact]
    public void The_ends_of_a_range_belong_to_its_first_and_last_part()
    {
        var parts = new RangeParts([0, 1]);
        Assert.Equal(1, parts.In(0, RangeParts.Chosen([true, false])));
        Assert.Equal(1, parts.In(RangeParts.Count - 1, RangeParts.Chosen([false, true])));
        Assert.Equal(0, parts.In(RangeParts.Count - 1, RangeParts.Chosen([true, false])));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(63)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(1000)]
    [InlineData(Bags.Kitchens)]
    public void Kitchens_by_the_word_are_as_many_as_kitchens_one_by_one(int kitchens)
    {
        var random = new Random(kitchens);
        double[] shares = [.. Enumerable.Range(0, kitchens).Select(_ => random.NextDouble())];
        bool[] isChosen = [.. Enumerable.Range(0, kitchens).Select(_ => random.NextDouble() < 0.3)];
        var (parts, chosen) = (new RangeParts(shares), RangeParts.Chosen(isChosen));
        for (var part = 0; part < RangeParts.Count; part++)
        {
            var (low, high) = (part / 8.0, (part + 1) / 8.0);
            Assert.Equal(Enumerable.Range(0, kitchens).Count(kitchen => isChosen[kitchen] && shares[kitchen] >= low && shares[kitchen] < high), parts.In(part, chosen));
        }
    }
}
