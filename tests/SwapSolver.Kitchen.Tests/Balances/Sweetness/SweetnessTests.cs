using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class SweetnessTests
{
    private const string Sweetness = "sweetness";

    [Fact]
    public void Sugar_tastes_as_sweet_as_itself() =>
        // 50 g of sucrose, which is 1 by definition, in 250 g.
        Assert.Equal(0.2, Bowl.Of(("sugar", 50), ("water", 200)).Reading(Sweetness)!.Value, 12);

    [Fact]
    public void Two_sweeteners_are_added_up_by_what_each_tastes_like()
    {
        // Sucrose = 1 by definition; erythritol 0.65 from memory of tasting panels. 30 x 1 + 100 x 0.65 = 95 g of sugar in 380 g.
        var bowl = Bowl.Of(("sugar", 30), ("erythritol", 100), ("almond-meal", 50), ("water", 200));

        Assert.Equal(95.0 / 380, bowl.Reading(Sweetness)!.Value, 12);
    }

    [Fact]
    public void Doubling_every_line_leaves_sweetness_unchanged() =>
        Assert.Equal(Loaf.Muffins.Reading(Sweetness)!.Value, Loaf.Muffins.Scaled(2).Reading(Sweetness)!.Value, 12);

    [Fact]
    public void How_sweet_a_loaf_is_to_be_is_the_bakers_to_say() =>
        Assert.True(Bowls.Balance(Sweetness).Band(Loaf.Muffins, Draws.Typical).IsOpen);

    [Fact]
    public void It_is_told_of_a_formula_that_holds_a_sweetener_and_of_no_other()
    {
        var balances = TestKitchen.Bakehouse.Balances;

        Assert.Contains(balances.ToldOf(Loaf.Muffins), balance => balance.Id == Sweetness);
        Assert.Equal(balances.Ratios, balances.ToldOf(Loaf.Walnut));
    }
}
