using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>Spoons and cups by what a cup or a spoon is known to weigh, and what is said of each.</summary>
public sealed class VolumeWeighingTests
{
    private const string AsCooksDo = "filled as cooks usually do; spooned or dipped makes up to 15 % either way";

    /// <summary>128 g a cup are 8 g a tablespoon, of which sixteen fill it.</summary>
    private static readonly Ingredient Flour = Larder.Of(Role.Flour, ("cup", 128));

    [Fact]
    public void A_cup_of_nobody_is_a_US_cup_and_that_is_said()
    {
        Assert.Equal<string>(["a US customary cup of 236.59 mL", AsCooksDo], Larder.Weigh(Flour, 1, "cup", kitchen: null).Assumed);
        // The kitchen's or the line's own cup needs no word, and neither does a millilitre.
        Assert.Equal<string>([AsCooksDo], Larder.Weigh(Flour, 1, "cup").Assumed);
        Assert.Equal<string>([AsCooksDo], Larder.Weigh(Flour, 1, "cup", kitchen: null, MeasureSystem.Metric).Assumed);
        Assert.Equal<string>([AsCooksDo], Larder.Weigh(Flour, 100, "millilitre", kitchen: null).Assumed);
    }

    [Fact]
    public void A_dessertspoon_has_one_size_wherever_it_lies_and_a_pint_has_two()
    {
        // 10 mL of 128 g in 236.588 mL.
        var spoon = Larder.Weigh(Flour, 1, "dessertspoon");
        Assert.Equal(128 / 23.65882365, spoon.Grams!.Value.Typical.Value, 1e-9);
        Assert.Equal<string>(["a dessertspoon of 10 mL, its only size", AsCooksDo], spoon.Assumed);
        Assert.Equal("Australian measures know no pint; give grams or another measure", Larder.Weigh(Flour, 1, "pint", MeasureSystem.Australian).Problem);
    }

    [Fact]
    public void Whoever_says_how_a_cup_was_filled_is_taken_at_the_word()
    {
        // Packed is 135 % of a level cup.
        var packed = Larder.Weigh(Flour, 1, "cup", filling: "packed");
        Assert.Equal(128 * 1.35, packed.Grams!.Value.Typical.Value, 1e-9);
        Assert.Empty(packed.Assumed);
    }

    [Fact]
    public void A_spoon_that_was_weighed_sifted_is_not_sifted_twice_and_does_not_contradict_a_plain_cup()
    {
        var flour = Larder.Of(Role.Flour, ("cup", 128), ("tbsp, sifted", 7));
        var spoon = Larder.Weigh(flour, 1, "tablespoon", filling: "sifted");
        Assert.Equal(7, spoon.Grams!.Value.Typical.Value, 1e-9);
        Assert.Equal<string>([AsCooksDo], spoon.Assumed);
    }

    [Fact]
    public void A_cup_and_a_spoon_that_contradict_each_other_are_both_held_for_possible_and_that_is_said()
    {
        // By the cup a spoon weighs 8 g, by itself 10 g: 8 less 15 % to 10 and 15 %.
        var spoon = Larder.Weigh(Larder.Of(Role.Flour, ("cup", 128), ("tbsp", 10)), 1, "tablespoon");
        Assert.Equal((6.8, 10, 11.5), (Math.Round(spoon.Grams!.Value.Low.Value, 9), spoon.Grams.Value.Typical.Value, Math.Round(spoon.Grams.Value.High.Value, 9)));
        Assert.Equal<string>([AsCooksDo, "the weights known of a tablespoon and a cup contradict each other (10 g here, 8 g by the cup)"], spoon.Assumed);
        // 8.3 g are 8 g but for the rounding.
        Assert.Equal<string>([AsCooksDo], Larder.Weigh(Larder.Of(Role.Flour, ("cup", 128), ("tbsp", 8.3)), 1, "tablespoon").Assumed);
    }

    [Fact]
    public void A_guess_of_a_spoon_says_so_and_reaches_as_far_as_it_may_be_wrong()
    {
        // Two teaspoons of 3 g, which may be 1.5 to 6 g.
        var spoons = Larder.Weigh(Larder.Guessed(Role.LeaveningBlend, 1.5, 3, 6), 2, "teaspoon");
        Assert.Equal((3, 6, 12), (spoons.Grams!.Value.Low.Value, spoons.Grams.Value.Typical.Value, spoons.Grams.Value.High.Value));
        Assert.Equal<string>([AsCooksDo, "what a spoon of thing weighs is an estimate; use a scale where it matters"], spoons.Assumed);
    }
}
