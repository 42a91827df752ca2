using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class LeftOutTests
{
    private static readonly LeftOut TreeNuts = Without("tree-nuts");

    [Fact]
    public void A_loaf_with_nuts_reads_the_share_of_its_batter_that_carries_them()
    {
        // 100 g of almond meal and 50 g of walnut meal in 300 g.
        var loaf = Bowl.Of(("almond-meal", 100), ("walnut-meal", 50), ("water", 150));

        Assert.Equal(0.5, TreeNuts.Read(loaf, loaf, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void Nothing_of_what_is_left_out_may_stay_even_where_the_reference_is_full_of_it() =>
        Assert.Equal(new Band(new Level(0), new Level(0)), TreeNuts.Band(Loaf.Walnut, Draws.Typical));

    [Theory]
    [InlineData("almond-flour-blanched")]
    [InlineData("almond-meal")]
    [InlineData("almond-flour-defatted")]
    [InlineData("almond-butter")]
    [InlineData("almond-drink-unsweetened")]
    [InlineData("hazelnut-flour")]
    [InlineData("walnut-meal")]
    [InlineData("pecan-meal")]
    [InlineData("cashew-flour")]
    [InlineData("pistachio-meal")]
    [InlineData("macadamia-meal")]
    public void These_are_tree_nuts_by_both_lists(string id)
    {
        // FDA guidance on food allergens, edition 5 of January 2025, and Regulation (EU) No 1169/2011, Annex II, item 8.
        var allergens = TestKitchen.Ingredient(id).Allergens;

        Assert.Contains("tree-nuts", allergens.Us);
        Assert.Contains("tree-nuts", allergens.Eu);
        Assert.Equal(1, TreeNuts.Numerator(TestKitchen.Ingredient(id).Typical).Value);
    }

    [Theory]
    [InlineData("coconut-flour")]
    [InlineData("coconut-oil")]
    [InlineData("coconut-milk-canned")]
    [InlineData("coconut-drink-unsweetened")]
    [InlineData("chestnut-flour")]
    [InlineData("tiger-nut-flour")]
    [InlineData("peanut-flour-defatted")]
    [InlineData("sunflower-seed-flour")]
    public void These_are_no_tree_nuts_by_either_list(string id)
    {
        // Coconut and chestnut are no longer counted by the FDA since January 2025 and were never in the EU list; a
        // tiger nut is a tuber, a peanut a legume with an entry of its own, a sunflower seed in neither list.
        Assert.False(TestKitchen.Ingredient(id).Allergens.Carries("tree-nuts"));
        Assert.Equal(0, TreeNuts.Numerator(TestKitchen.Ingredient(id).Typical).Value);
    }

    [Theory]
    [InlineData("milk", "butter")]
    [InlineData("milk", "ghee")]
    [InlineData("milk", "whey-protein-isolate")]
    [InlineData("milk", "casein")]
    [InlineData("milk", "buttermilk")]
    [InlineData("milk", "cream-cheese")]
    [InlineData("egg", "egg-white-dried")]
    [InlineData("egg", "egg-yolk")]
    [InlineData("sesame", "tahini")]
    [InlineData("sesame", "sesame-meal")]
    [InlineData("soy", "soy-protein-isolate")]
    [InlineData("soy", "tofu-silken")]
    [InlineData("peanut", "peanut-flour-defatted")]
    [InlineData("wheat", "wheat-gluten")]
    [InlineData("gluten-cereals", "wheat-gluten")]
    [InlineData("gluten-cereals", "rye-flour-medium")]
    [InlineData("gluten-cereals", "oat-bran")]
    [InlineData("lupin", "lupin-flour")]
    public void The_kitchen_does_not_miss_a_carrier(string allergen, string id)
    {
        // By the same two lists: FDA guidance, edition 5; Regulation (EU) No 1169/2011, Annex II.
        Assert.Equal(1, Without(allergen).Numerator(TestKitchen.Ingredient(id).Typical).Value);
    }

    [Fact]
    public void Oats_and_lupin_are_allergens_in_europe_alone()
    {
        Assert.DoesNotContain("gluten-cereals", TestKitchen.Ingredient("oat-bran").Allergens.Us);
        Assert.DoesNotContain("wheat", TestKitchen.Ingredient("oat-bran").Allergens.Us);
        Assert.Empty(TestKitchen.Ingredient("lupin-flour").Allergens.Us);
    }

    private static LeftOut Without(string allergen) => new(
        TestKitchen.Bakehouse.Balances.BatterMass.Settings with { Id = $"without-{allergen}" },
        ingredient => ingredient.Allergens.Carries(allergen))
    {
        MayBeReadAsClaim = true,
        IsCertainOf = _ => true,
    };
}
