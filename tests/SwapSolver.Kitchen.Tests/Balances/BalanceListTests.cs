using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
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

    [Theory]
    [InlineData(Role.Flour, "flour-mass")]
    [InlineData(Role.Yeast, "yeast-mass")]
    public void A_role_is_held_under_its_own_name(Role role, string id) => Assert.Equal(id, BalanceList.RoleMassId(role));
}
