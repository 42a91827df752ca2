using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class RoleMassTests
{
    private static readonly Formula Reference =
        Bowl.Of(("almond-meal", 150), ("flaxseed-ground", 50), ("psyllium-husk", 20), ("water", 200), ("salt", 4));

    [Fact]
    public void The_mass_of_a_role_is_counted_by_that_of_the_loaf_that_works()
    {
        // Flours: 240 g against 150 + 50 = 200 g. The husk is a gel and no flour.
        var variant = Bowl.Of(("sunflower-seed-flour", 240), ("psyllium-husk", 10), ("water", 100));

        Assert.Equal(1.2, Read("flour-mass", variant), 12);
        Assert.Equal(0.5, Read("liquid-mass", variant), 12);
        Assert.Equal(0.0, Read("salt-mass", variant), 12);
    }

    [Theory]
    [InlineData("flour-mass", 0.92, 1.08)]
    [InlineData("liquid-mass", 0.75, 1.35)]
    [InlineData("salt-mass", 0.75, 1.35)]
    public void Flour_is_held_to_eight_percent_and_the_other_roles_less_tightly(string id, double low, double high)
    {
        // The default bands of the trade's equations, as shares of a reading of 1.
        Assert.Equal(new Band(new Level(low), new Level(high)), Bowls.Balance(id).Band(Reference, Draws.Typical));
    }

    [Fact]
    public void A_role_that_the_loaf_does_not_have_is_not_held()
    {
        var eggs = Bowls.Balance("egg-mass");

        Assert.Null(eggs.Read(Reference, Reference, Draws.Typical));
        Assert.True(eggs.Band(Reference, Draws.Typical).IsOpen);
        Assert.Empty(eggs.Rows(Reference, new Band(new Level(0.75), new Level(1.35)), Draws.Typical));
    }

    [Fact]
    public void Leavening_and_gel_are_held_by_what_they_do_and_not_by_their_mass()
    {
        var held = BalanceList.BandedRoles;

        Assert.DoesNotContain(Role.Acid, held);
        Assert.DoesNotContain(Role.Base, held);
        Assert.DoesNotContain(Role.LeaveningBlend, held);
        Assert.DoesNotContain(Role.Gel, held);
        Assert.Contains(Role.Flour, held);
    }

    private static double Read(string id, Formula variant) =>
        Bowls.Balance(id).Read(variant, Reference, Draws.Typical)!.Value.Value;
}
