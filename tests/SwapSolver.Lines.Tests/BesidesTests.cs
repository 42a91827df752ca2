using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Lines.Tests;

/// <summary>What a line names besides its ingredient is not in the grams, and is never dropped without a word.</summary>
public sealed class BesidesTests
{
    [Theory]
    [InlineData("60 g lupin flour (or sunflower seed flour)", "or sunflower seed flour")]
    [InlineData("300 ml water (plus more as needed)", "plus more as needed")]
    [InlineData("200 g almond flour, plus extra for dusting", "plus extra for dusting")]
    [InlineData("2 eggs, beaten with 1 tbsp water", "with 1 tbsp water")]
    [InlineData("100 g lupin flour, or almond flour", "or almond flour")]
    public void A_choice_or_an_addition_is_told(string line, string words) =>
        Assert.Contains($"read without '{words}'", One(line).Assumed);

    [Theory]
    [InlineData("200 g almonds, with skin")]
    [InlineData("200 g almond flour (blanched)")]
    [InlineData("1 cup or 240 ml water")]
    [InlineData("2 eggs, at room temperature")]
    public void A_description_is_no_addition(string line) =>
        Assert.DoesNotContain(One(line).Assumed, words => words.StartsWith("read without", StringComparison.Ordinal));

    [Theory]
    // Household weights of USDA release 26: 16076 lupins, mature seeds, 180 g a cup; 12036 sunflower kernels 140 g; 12014 pumpkin
    // kernels 129 g; 12023 sesame seeds 144 g. Ground, hazelnuts (12120) weigh 75 g of 135 g whole, almonds (12061) 95 of 143 g.
    [InlineData("1 cup lupin flour", 180)]
    [InlineData("1 cup sunflower seed flour", 140)]
    [InlineData("1 cup pumpkin seed flour", 129)]
    [InlineData("1 cup sesame meal", 144)]
    public void A_cup_that_is_known_of_the_whole_seed_may_weigh_far_less_when_it_is_ground(string line, double whole)
    {
        var reading = One(line);

        Assert.Contains(reading.Assumed, words => words.Contains("whole seed only", StringComparison.Ordinal));
        Assert.Equal(whole, reading.Grams!.Value.Typical.Value, 0.01);
        Assert.InRange(whole * 75 / 135, reading.Grams.Value.Low.Value, reading.Grams.Value.High.Value);
        Assert.InRange(whole * 95 / 143, reading.Grams.Value.Low.Value, reading.Grams.Value.High.Value);
    }

    [Theory]
    [InlineData("1 cup sunflower seeds")]
    [InlineData("1 cup pumpkin seeds")]
    [InlineData("1 cup hazelnut flour")]
    public void A_cup_of_what_was_weighed_is_as_sure_as_any(string line) =>
        Assert.DoesNotContain(One(line).Assumed, words => words.Contains("whole seed only", StringComparison.Ordinal));

    private static LineReading One(string line) => Assert.Single(TestLines.Reader.Read(line, MeasureSystem.UsCustomary));
}
