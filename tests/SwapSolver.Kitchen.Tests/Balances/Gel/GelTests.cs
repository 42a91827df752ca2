using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class GelTests
{
    private const string Gel = "gel";

    private static readonly Ingredient Gum = Invented.Of("gum", Role.Gel, (Fact.GelStrength, 5));

    private static readonly Ingredient Meal = Invented.Of("meal", Role.Flour);

    [Fact]
    public void A_gram_of_husk_powder_is_what_gels_are_counted_in()
    {
        // 20 g of powder in 400 g of batter.
        Assert.Equal(0.05, Bowl.Of(("psyllium-husk-powder", 20), ("water", 380)).Reading(Gel)!.Value, 12);
    }

    [Fact]
    public void Two_grams_of_a_strong_gum_do_the_work_of_ten_of_powder()
    {
        // 2 g x 5 = 10 g of powder in 200 g of batter.
        Assert.Equal(0.05, Bowls.Weigh(10, (Gum, 2), (Meal, 198)).Reading(Gel)!.Value, 12);
    }

    [Theory]
    [InlineData("xanthan-gum")]
    [InlineData("guar-gum")]
    [InlineData("konjac-glucomannan")]
    public void Gums_are_stronger_than_husk_powder(string id)
    {
        // Common practice, no source.
        Assert.True(Bowls.Typical(id, Fact.GelStrength) > Bowls.Typical("psyllium-husk-powder", Fact.GelStrength));
    }

    [Fact]
    public void Whole_husk_is_no_stronger_than_its_powder()
    {
        // Common practice, no source.
        Assert.InRange(Bowls.Typical("psyllium-husk", Fact.GelStrength), 0.5, 1);
    }

    [Fact]
    public void Egg_water_and_butter_are_no_gel() =>
        Assert.Equal(0, Bowl.Of(("water", 100), ("butter", 50)).WithEggs(3).Reading(Gel)!.Value);

    [Fact]
    public void A_loaf_without_gel_bears_a_trace_of_it()
    {
        var band = Bowls.Balance(Gel).Band(Bowls.Weigh(10, (Meal, 200)), Draws.Typical);

        Assert.Equal(new Band(new(0), new(0.004)), band);
    }
}
