using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class NumberWordsTests
{
    [Theory]
    [InlineData(200, "200 g")]
    [InlineData(12.5, "12.5 g")]
    [InlineData(0.1, "0.1 g")]
    [InlineData(2.34, "2.34 g")]
    public void Grams_are_said_as_a_scale_shows_them(double grams, string said) =>
        Assert.Equal(said, NumberWords.Grams(new Grams(grams)));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(123.4, "123")]
    [InlineData(12.34, "12.3")]
    [InlineData(1.234, "1.23")]
    [InlineData(0.1234, "0.123")]
    [InlineData(0.01234, "0.0123")]
    [InlineData(1, "1")]
    public void A_level_is_said_with_three_figures_that_count(double level, string said) =>
        Assert.Equal(said, NumberWords.Level(new Level(level)));

    [Fact]
    public void Two_levels_that_differ_are_told_apart()
    {
        Assert.Equal(("1.0501", "1.05"), NumberWords.Apart(new Level(1.0501), new Level(1.05)));
        Assert.Equal(("0.85", "0.9"), NumberWords.Apart(new Level(0.85), new Level(0.9)));
    }
}
