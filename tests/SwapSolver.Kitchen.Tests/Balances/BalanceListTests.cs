using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class BalanceListTests
{
    private static readonly BalanceList Balances = TestKitchen.Bakehouse.Balances;

    [Fact]
    public void No_two_balances_share_a_name() => Assert.Equal(
        Balances.Targetable.Length, Balances.Targetable.Select(balance => balance.Id).Distinct().Count());

    [Fact]
    public void A_crumb_is_judged_by_its_water_acid_gas_protein_gel_and_fat() => Assert.Equal(
        ["hydration", "leavening", "gas", "setting-protein", "gel", "richness"],
        Balances.Anchored.Select(balance => balance.Id));

    [Fact]
    public void Net_carbs_and_salt_are_limits_and_not_aims() =>
        Assert.DoesNotContain(Balances.Anchored, balance => balance is NetCarbohydrate or Salt);

    [Fact]
    public void Every_role_that_is_held_has_its_balance() => Assert.Equal(
        BalanceList.BandedRoles, Balances.RoleMasses.Select(balance => balance.Role));

    [Fact]
    public void A_balance_is_found_by_its_name_and_only_by_that()
    {
        Assert.Same(Balances.NetCarbohydrate, Balances.Find("net-carbohydrate"));
        Assert.Equal("eggs", Balances.Find("eggs")!.Id);
        Assert.Null(Balances.Find("fluffiness"));
        // What answers print can be typed back.
        Assert.Equal("leavening", Balances.Find("acid-by-soda")!.Id);
        Assert.Equal("net-carbohydrate", Balances.Find("net-carbs")!.Id);
    }

    [Fact]
    public void A_bag_of_which_one_fact_is_missing_cannot_be_solved_with_and_says_which()
    {
        var known = Invented.Of("bag", Role.Flour, (Fact.Fat, 10));
        var lacking = known.NotKnowing(Fact.Acid);
        var leavening = Balances.Leavening;

        Assert.True(Balances.Know(known));
        Assert.Empty(Balances.Unknown(known));
        Assert.False(Balances.Know(lacking));
        Assert.Same(Fact.Acid, Assert.Single(Balances.Unknown(lacking)));
        Assert.True(leavening.CanRead(known));
        Assert.False(leavening.CanRead(lacking));
        Assert.False(leavening.CanRead(Bowls.Weigh(10, (known, 100), (lacking, 1))));
        Assert.True(Balances.Find("richness")!.CanRead(lacking));
    }

    [Theory]
    [InlineData(Role.Flour, "flour-mass")]
    [InlineData(Role.Yeast, "yeast-mass")]
    public void A_role_is_held_under_its_own_name(Role role, string id) => Assert.Equal(id, BalanceList.RoleMassId(role));
}
