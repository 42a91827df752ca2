using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>Eggs, lemons, slices and pinches.</summary>
public sealed class PieceWeighingTests
{
    [Fact]
    public void Two_whole_eggs_are_two_eggs_and_of_the_country_of_the_line()
    {
        var egg = TestKitchen.Ingredient("egg-whole");
        Assert.Equal(EggSize.LargeUs, Larder.Weigh(egg, 2, "whole").Egg);
        Assert.Equal(Larder.Weigh(egg, 2, null).Grams, Larder.Weigh(egg, 2, "whole").Grams);
        Assert.Equal(EggSize.MediumEu, Larder.Weigh(egg, 2, null, MeasureSystem.UsCustomary, MeasureSystem.Metric).Egg);
    }

    [Fact]
    public void A_whole_lemon_gives_its_juice_and_butter_is_not_counted()
    {
        // 48 g of juice a lemon (usda-sr26); sticks of butter weigh 113 g, but nobody said sticks.
        var lemon = TestKitchen.Ingredient("lemon-juice");
        Assert.Equal(96, Larder.Weigh(lemon, 2, "whole").Grams!.Value.Typical.Value);
        Assert.Equal(96, Larder.Weigh(lemon, 2, null).Grams!.Value.Typical.Value);
        Assert.Equal(226, Larder.Weigh(TestKitchen.Ingredient("butter"), 2, "stick").Grams!.Value.Typical.Value);
        Assert.Equal(
            "so many of unsalted butter cannot be weighed: the unit is missing; give grams, or a spoon or cup", Larder.Weigh(TestKitchen.Ingredient("butter"), 2, null).Problem);
    }

    [Theory]
    // Under 2 g apart they are one size, rounded in two ways.
    [InlineData(28, 29.9, null)]
    [InlineData(28, 30, "thing comes by the slice in sizes of 28 and 30 g; give grams")]
    [InlineData(28, 14, "thing comes by the slice in sizes of 28 and 14 g; give grams")]
    public void Slices_of_two_sizes_are_asked_back(double one, double other, string? problem)
    {
        var weighed = Larder.Weigh(Larder.Of(Role.Flavour, ("slice", one), ("slice", other)), 3, null, words: "slice");
        Assert.Equal(problem, weighed.Problem);
        Assert.Equal(problem is null ? 3 * one : null, weighed.Grams?.Typical.Value);
    }

    [Theory]
    [InlineData("ear", true)]
    [InlineData("ears", true)]
    [InlineData("pear", false)]
    [InlineData("pears", false)]
    public void A_pear_is_no_ear(string word, bool isEar) =>
        Assert.Equal(isEar ? 100 : null, Larder.Weigh(Larder.Of(Role.Flavour, ("ear", 100)), 1, null, words: word).Grams?.Typical.Value);

    [Fact]
    public void A_pinch_is_a_sixteenth_of_a_teaspoon_of_what_it_is_and_a_guess_of_both_says_both()
    {
        const string Practice = "a pinch of 0.31 mL, as is common practice";
        // A teaspoon is 4.92892159375 mL (nist-handbook-44), a pinch 0.15 to 0.6 mL.
        const double Teaspoon = 4.92892159375;
        var known = Larder.Weigh(Larder.Of(Role.Salt, ("tsp", 6)), 1, "pinch");
        Assert.Equal(6 * 0.15 / Teaspoon, known.Grams!.Value.Low.Value, 1e-9);
        Assert.Equal(6 * 0.31 / Teaspoon, known.Grams.Value.Typical.Value, 1e-9);
        Assert.Equal<string>([Practice], known.Assumed);

        var guessed = Larder.Weigh(Larder.Guessed(Role.Salt, 3, 6, 9), 2, "pinch");
        Assert.Equal(2 * 3 * 0.15 / Teaspoon, guessed.Grams!.Value.Low.Value, 1e-9);
        Assert.Equal(2 * 9 * 0.6 / Teaspoon, guessed.Grams.Value.High.Value, 1e-9);
        Assert.Equal<string>([Practice, "what a spoon of thing weighs is an estimate; use a scale where it matters"], guessed.Assumed);

        // Packed is 135 % of a level one, too.
        Assert.Equal(1.35 * 6 * 0.31 / Teaspoon, Larder.Weigh(Larder.Of(Role.Salt, ("tsp", 6)), 1, "pinch", filling: "packed").Grams!.Value.Typical.Value, 1e-9);
    }
}
