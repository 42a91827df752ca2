using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class ReadingsTests
{
    private static readonly Balance Leavening = TestKitchen.Bakehouse.Balances.Leavening;

    [Theory]
    [InlineData(0.95, false)]
    [InlineData(0.91, false)] // 0.0075 is a twentieth of 0.15, and 0.9075 the end of it
    [InlineData(0.905, true)]
    [InlineData(0.90, true)]
    [InlineData(1.04, false)]
    [InlineData(1.045, true)]
    public void A_reading_binds_within_a_twentieth_of_its_band(double value, bool binds)
    {
        var reading = Of(value, new Band(new Level(0.90), new Level(1.05)));
        Assert.Equal(binds, Readings.Binding([reading]).Contains("leavening"));
    }

    [Fact]
    public void A_reading_without_limits_never_binds() => Assert.Empty(Readings.Binding([Of(1, Band.Open)]));

    [Fact]
    public void What_a_baker_would_notice_is_said_only_outside_the_band()
    {
        var band = new Band(new Level(0.90), new Level(1.05));
        Assert.Empty(Of(1, band).Meaning);
        Assert.StartsWith("soda is left over", Of(0.5, band).Meaning, StringComparison.Ordinal);
        Assert.StartsWith("acid is left over", Of(1.5, band).Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cap_asked_for_is_the_band_that_is_shown()
    {
        var answer = Ask.Variant(Loaf.CocoaCake, Ask.NetCarbs(2.5)).Answer().Answers[0];
        var reading = answer.Readings.Single(one => one.Balance.Id == "net-carbohydrate");
        Assert.Equal(new Band(null, new Level(2.5)), reading.Band);
        Assert.Equal(new Tally(answer.Formula).NetCarbs, reading.Value.Value, 1e-9);
    }

    [Fact]
    public void Every_reading_of_an_answer_is_inside_its_band() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from reading in baked.Answer.Readings
            where reading.Standing != Standing.Inside
            select $"{baked.Question.Name}: {reading.Balance.Id} {reading.Standing}");

    private static Reading Of(double value, Band band)
    {
        var level = new Level(value);
        return new Reading(Leavening, level, level, level, band);
    }
}
