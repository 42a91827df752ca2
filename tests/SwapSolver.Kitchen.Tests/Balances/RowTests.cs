using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>The rows that a band becomes, multiplied out by hand. That they say the same as the readings, in any bowl, is held by <see cref="BalanceRowLaws"/>.</summary>
public sealed class RowTests
{
    private static readonly Ingredient Cream = Invented.Of("cream", Role.Liquid, (Fact.Fat, 40));

    private static readonly Ingredient Meal = Invented.Of("meal", Role.Flour);

    private static readonly Ingredient Acid = Invented.Of("acid", Role.Acid, (Fact.Acid, 10));

    private static readonly Ingredient Soda = Invented.Of("soda", Role.Base, (Fact.Base, 10));

    private static readonly Ingredient Yeast = Invented.Of("yeast", Role.Yeast, (Fact.YeastGas, 15));

    private static readonly Ingredient Sugar = Invented.Of("sugar", Role.Sweetener, (Fact.Fermentable, 18.0156));

    [Fact]
    public void Fat_by_batter_between_a_tenth_and_three_tenths_is_two_rows_without_a_constant()
    {
        // At least: cream 0.4 - 0.1, meal 0 - 0.1. At most: cream 0.3 - 0.4, meal 0.3.
        var loaf = Bowls.Weigh(10, (Cream, 50), (Meal, 50));
        var rows = Bowls.Balance("richness").Rows(loaf, Band(0.1, 0.3), Draws.Typical);

        Assert.Equal([Side.Low, Side.High], rows.Select(row => row.Side));
        AssertRow(rows[0], 0, (Cream, 0.3), (Meal, -0.1));
        AssertRow(rows[1], 0, (Cream, -0.1), (Meal, 0.3));
        Assert.All(rows, row => Assert.True(row.Exact));
    }

    [Fact]
    public void A_role_held_to_a_tenth_more_or_less_is_two_masses()
    {
        // 200 g of flour in the loaf that works: at least 180 g, at most 220 g.
        var loaf = Bowls.Weigh(10, (Meal, 200), (Cream, 50));
        var rows = Bowls.Balance("flour-mass").Rows(loaf, Band(0.9, 1.1), Draws.Typical);

        AssertRow(rows[0], 180, (Meal, 1), (Cream, 0));
        AssertRow(rows[1], -220, (Meal, -1), (Cream, 0));
    }

    [Fact]
    public void Two_eggs_at_most_are_a_hundred_grams()
    {
        // A large egg weighs 50 g without its shell: USDA SR 26, row 01123.
        var egg = TestKitchen.Ingredient("egg-whole");
        var row = Assert.Single(Bowls.Balance("eggs").Rows(
            Bowls.Weigh(10, (egg, 200), (Meal, 200)), new Band(null, new Level(2)), Draws.Typical));

        AssertRow(row, -100, (egg, -1), (Meal, 0));
    }

    [Fact]
    public void Gas_has_a_floor_for_each_way_in_which_it_may_run_short()
    {
        // Half a mmol a gram at least. Soda gives by its own 10, and with the acid 5 and 5; yeast makes 15, and of a gram of sugar come
        // 0.180156 x 2000 / 180.156 = 2.
        var loaf = Bowls.Weigh(10, (Soda, 10), (Acid, 10), (Meal, 180));
        var rows = Bowls.Balance("gas").Rows(loaf, new Band(new Level(0.5), null), Draws.Typical);

        Assert.All(rows, row => Assert.Equal(0, row.Least));
        Assert.Equal(
            [(4.5, 4.5, -0.5, 1.5), (4.5, 4.5, 14.5, -0.5), (9.5, -0.5, -0.5, 1.5), (9.5, -0.5, 14.5, -0.5)],
            rows.Select(row => (Of(row, Soda), Of(row, Acid), Of(row, Yeast), Of(row, Sugar))).Order());
    }

    [Theory]
    [InlineData(5, 4, 4)]
    [InlineData(20, 9, -1)]
    public void Gas_is_kept_from_running_over_by_what_runs_short_in_the_loaf_that_works(double acidGrams, double ofSoda, double ofAcid)
    {
        // 1 mmol a gram at most. With too little acid soda counts 5 and acid 5, with enough soda 10 and acid nothing.
        var loaf = Bowls.Weigh(10, (Soda, 10), (Acid, acidGrams), (Yeast, 1), (Sugar, 1), (Meal, 180));
        var row = Assert.Single(Bowls.Balance("gas").Rows(loaf, new Band(null, new Level(1)), Draws.Typical));

        // Of the yeast's two the sugar runs short: 15 mmol could be made, and there are 2.
        AssertRow(row, 0, (Soda, -ofSoda), (Acid, -ofAcid), (Yeast, 1), (Sugar, -1), (Meal, 1));
    }

    private static Band Band(double low, double high) => new(new Level(low), new Level(high));

    private static double Of(Row row, Ingredient ingredient) => Math.Round(row.Coefficient(ingredient.Typical).Value, 9);

    private static void AssertRow(Row row, double least, params ReadOnlySpan<(Ingredient Ingredient, double PerGram)> terms)
    {
        Assert.Equal(least, row.Least, 9);
        foreach (var (ingredient, perGram) in terms)
        {
            Assert.True(Math.Abs(perGram - Of(row, ingredient)) < 1e-8, $"{row.Side}: {ingredient.Id} counts {Of(row, ingredient)}, by hand {perGram}");
        }
    }
}
