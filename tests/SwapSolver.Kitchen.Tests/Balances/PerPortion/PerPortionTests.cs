using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class PerPortionTests
{
    [Theory]
    // USDA SR 26, row 12120 (hazelnuts), for 100 g: protein 14.95 g, fat 60.75 g of which saturated 4.464 g, sugars
    // 4.34 g, fibre 9.7 g, energy 628 kcal. 120 g in 12 slices are 10 g a slice.
    [InlineData("protein", 1.495)]
    [InlineData("fat", 6.075)]
    [InlineData("saturated-fat", 0.4464)]
    [InlineData("sugars", 0.434)]
    [InlineData("fibre", 0.97)]
    [InlineData("energy", 62.8)]
    public void A_slice_has_its_share_of_what_the_nuts_have(string id, double expected) =>
        Assert.Equal(expected, Bowl.Of(("hazelnut-flour", 120)).Reading(id)!.Value, 12);

    [Fact]
    public void Sodium_is_told_in_milligrams()
    {
        // USDA SR 26, row 02047: table salt has 38 758 mg of sodium in 100 g. 6 g in 12 slices are half a gram a slice.
        Assert.Equal(193.79, Bowl.Of(("salt", 6)).Reading("sodium")!.Value, 9);
    }

    [Fact]
    public void A_loaf_costs_what_its_lines_cost()
    {
        // 200 g at 15 a kilogram and 250 g at 2 a kilogram: 3 + 0.5.
        var almonds = TestKitchen.Ingredient("almond-meal").Priced(15);
        var milk = TestKitchen.Ingredient("milk-whole").Priced(2);
        Assert.Equal(3.5, Bowls.Weigh(10, (almonds, 200), (milk, 250)).Reading("price")!.Value, 12);
    }

    [Fact]
    public void One_line_without_a_price_leaves_the_loaf_without_one()
    {
        var price = Bowls.Balance("price");
        var almonds = TestKitchen.Ingredient("almond-meal").Priced(15);
        Assert.True(price.CanRead(Bowls.Weigh(10, (almonds, 200))));
        Assert.False(price.CanRead(Bowls.Weigh(10, (almonds, 200), (TestKitchen.Ingredient("milk-whole"), 250))));
    }

    [Fact]
    public void A_slice_reads_as_the_nutrition_beside_it_says()
    {
        foreach (var (_, loaf) in Loaf.All)
        {
            var slice = Portion.WholeLoaf(loaf, TestKitchen.Bakehouse.Balances.NetCarbohydrate).Share(1.0 / loaf.Slices);
            Assert.Equal(slice.EnergyKcal.Value, loaf.Reading("energy")!.Value, 9);
            Assert.Equal(slice.Protein.Value, loaf.Reading("protein")!.Value, 9);
            Assert.Equal(slice.Fat.Value, loaf.Reading("fat")!.Value, 9);
            Assert.Equal(slice.SaturatedFat!.Value.Value, loaf.Reading("saturated-fat")!.Value, 9);
            Assert.Equal(slice.Sugars!.Value.Value, loaf.Reading("sugars")!.Value, 9);
            Assert.Equal(slice.Fibre!.Value.Value, loaf.Reading("fibre")!.Value, 9);
            Assert.Equal(slice.Sodium!.Value.Value * 1000, loaf.Reading("sodium")!.Value, 6);
        }
    }

    [Fact]
    public void Nothing_of_it_is_asked_of_a_loaf_unless_the_baker_asks()
    {
        var balances = TestKitchen.Bakehouse.Balances;
        Assert.Empty(balances.Portions.Intersect(balances.All));
        Assert.All(balances.Portions, balance => Assert.True(balance.Band(Loaf.Walnut, Draws.Typical).IsOpen));
    }

    [Fact]
    public void What_nobody_priced_can_be_solved_with_all_the_same() =>
        Assert.True(TestKitchen.Bakehouse.Balances.Know(TestKitchen.Ingredient("almond-meal")));
}
