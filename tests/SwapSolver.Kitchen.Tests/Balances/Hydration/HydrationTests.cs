using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class HydrationTests
{
    private const string Hydration = "hydration";

    private static readonly Ingredient Meal = Invented.Of("meal", Role.Flour, (Fact.Water, 10), (Fact.WaterBound, 0.5));

    private static readonly Ingredient Husk = Invented.Of("husk", Role.Gel, (Fact.WaterBound, 10));

    private static readonly Ingredient Water = Invented.Of("tap", Role.Liquid, (Fact.Water, 100));

    [Fact]
    public void Hydration_is_all_the_water_by_all_the_water_bound()
    {
        // Water: 100 g meal x 0.10 + 140 g tap = 150 g. Bound: 100 g meal x 0.5 + 10 g husk x 10 = 150 g.
        var loaf = Bowls.Weigh(10, (Meal, 100), (Husk, 10), (Water, 140));

        Assert.Equal(1.0, loaf.Reading(Hydration)!.Value, 12);
    }

    [Fact]
    public void Doubling_every_line_leaves_hydration_unchanged()
    {
        var loaf = Loaf.Walnut;

        Assert.Equal(loaf.Reading(Hydration)!.Value, loaf.Scaled(2).Reading(Hydration)!.Value, 12);
    }

    [Fact]
    public void Ten_grams_more_husk_bind_a_hundred_grams_of_water()
    {
        // 150 g of water on 150 g bound, then 250 g on 250 g.
        var loaf = Bowls.Weigh(10, (Meal, 100), (Husk, 20), (Water, 240));

        Assert.Equal(1.0, loaf.Reading(Hydration)!.Value, 12);
    }

    [Fact]
    public void The_water_of_eggs_counts_as_water()
    {
        // USDA SR 26, row 01123: 76.15 g of water in 100 g of egg. 200 g x 0.7615 = 152.3 g on 100 g x 0.5 = 50 g bound,
        // with the 10 g that the meal brings.
        var loaf = Bowls.Weigh(10, (Meal, 100)).WithEggs(4);

        Assert.Equal((152.3 + 10) / 50, loaf.Reading(Hydration)!.Value, 12);
    }

    [Fact]
    public void Where_nothing_binds_water_there_is_no_hydration() =>
        Assert.Null(Bowls.Weigh(10, (Water, 100)).Reading(Hydration));

    [Fact]
    public void A_loaf_with_no_hydration_asks_for_none_of_its_variants() =>
        Assert.True(Bowls.Balance(Hydration).Band(Bowls.Weigh(10, (Water, 100)), Draws.Typical).IsOpen);

    [Fact]
    public void A_variant_may_be_six_percent_wetter_or_drier_than_the_loaf_that_works()
    {
        // The default of the trade's equations: 6 % either way of a reading of 1.
        var band = Bowls.Balance(Hydration).Band(Bowls.Weigh(10, (Meal, 100), (Husk, 10), (Water, 140)), Draws.Typical);

        Assert.Equal(0.94, band.Low!.Value.Value, 12);
        Assert.Equal(1.06, band.High!.Value.Value, 12);
    }
}
