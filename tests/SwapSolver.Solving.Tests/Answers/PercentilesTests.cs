using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class PercentilesTests
{
    /// <summary>Figures as they come, and as they hardly ever come: alike, in order, in steps, and such that every thirty-second tells
    /// nothing of the others.</summary>
    public static TheoryData<string> Kinds => ["drawn", "alike", "rising", "falling", "steps", "mostly-one", "every-thirty-second-low", "every-thirty-second-high", "far-ends"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void They_are_where_putting_all_figures_in_order_has_them(string kind)
    {
        foreach (var count in new[] { 1, 2, 19, 20, 21, 31, 32, 33, 100, 1000, Bags.Kitchens })
        {
            var random = new Random(count);
            double[] figures = [.. Enumerable.Range(0, count).Select(one => Figure(kind, one, random))];
            double[] inOrder = [.. figures.Order()];
            var given = figures.ToArray();
            Assert.Equal((inOrder[count / 20], inOrder[count - (count / 20) - 1]), Percentiles.Of(figures));
            Assert.Equal(given, figures);
        }
    }

    [Fact]
    public void Twenty_grams_from_one_to_twenty_have_the_second_and_the_nineteenth() =>
        Assert.Equal((2, 19), Percentiles.Of([20, 1, 19, 2, 18, 3, 17, 4, 16, 5, 15, 6, 14, 7, 13, 8, 12, 9, 11, 10]));

    private static double Figure(string kind, int one, Random random) => kind switch
    {
        "alike" => 7,
        "rising" => one,
        "falling" => -one,
        "steps" => random.Next(4),
        "mostly-one" => random.NextDouble() < 0.97 ? 1 : random.NextDouble() * 2,
        "every-thirty-second-low" => one % 32 == 0 ? -1 : random.NextDouble(),
        "every-thirty-second-high" => one % 32 == 0 ? 2 : random.NextDouble(),
        "far-ends" => Math.Tan((random.NextDouble() - 0.5) * 3.14),
        _ => random.NextDouble(),
    };
}
