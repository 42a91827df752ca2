using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

/// <summary>Figures that a baker aims at, and what gives way to them. Hydration may lie 6 % either way of the loaf's own by default.</summary>
public sealed class TargetsTests
{
    private const double Near = 1e-9;

    private static readonly Balance Hydration = Find("hydration");

    [Theory]
    // A floor alone: up to the usual end, or half a band, 6 %, above the floor.
    [InlineData(1.05, null, 1.05, 1.11)]
    [InlineData(0.90, null, 0.90, 1.06)]
    // A ceiling alone, likewise downwards, and never below nothing.
    [InlineData(null, 0.95, 0.89, 0.95)]
    [InlineData(null, 1.10, 0.94, 1.10)]
    [InlineData(null, 0.01, 0.00, 0.01)]
    // Both ends are kept as they are.
    [InlineData(0.50, 2.00, 0.50, 2.00)]
    public void An_open_side_of_a_crumb_s_figure_is_no_leave_to_run_away(double? low, double? high, double closedLow, double closedHigh)
    {
        var own = Read(Hydration, Loaf.Walnut);
        var band = Assert.Single(For(Loaf.Walnut).Joined([Targets.Of(Hydration, Shares(low, high, own))])).Band;
        Assert.Equal(closedLow * own, band.Low!.Value.Value, Near);
        Assert.Equal(closedHigh * own, band.High!.Value.Value, Near);
    }

    [Fact]
    public void Of_what_has_no_usual_band_the_other_side_stays_open()
    {
        var band = Assert.Single(For(Loaf.Walnut).Joined([Targets.Of(Find("protein"), new Band(new Level(6), null))])).Band;
        Assert.Equal(new Band(new Level(6), null), band);
    }

    [Fact]
    public void Two_figures_for_one_reading_are_both_kept_and_others_stand_beside_them()
    {
        var own = Read(Hydration, Loaf.Walnut);
        var joined = For(Loaf.Walnut).Joined([
            Targets.Of(Hydration, Shares(0.98, null, own)), Targets.Of(Find("protein"), new Band(new Level(6), null)), Targets.Of(Hydration, Shares(0.9, 1.02, own))]);
        Assert.Equal(["hydration", "protein"], joined.Select(hold => hold.Id));
        Assert.Equal((0.98 * own, 1.02 * own), (joined[0].Band.Low!.Value.Value, joined[0].Band.High!.Value.Value));
        Assert.True(joined[0].FromCaller);
    }

    [Fact]
    public void Two_figures_that_are_aimed_at_take_the_place_of_both_usual_bands()
    {
        var holds = For(Loaf.Walnut).Among(
            [Targets.Of(Hydration, Shares(1.05, 1.1, Read(Hydration, Loaf.Walnut))), Targets.Of(Find("richness"), Shares(0.8, 0.9, Read(Find("richness"), Loaf.Walnut)))], []);
        Assert.All(["hydration", "richness"], id => Assert.True(Assert.Single(holds, hold => hold.Id == id).FromCaller));
    }

    [Fact]
    public void One_figure_keeps_the_share_that_it_was_said_in()
    {
        var target = For(Loaf.Walnut).Of(TestKitchen.Bakehouse.Goals.Find("moister")!).First(hold => hold.Share is not null);
        Assert.Equal(target.Share, Assert.Single(For(Loaf.Walnut).Joined([target])).Share);
    }

    [Fact]
    public void A_figure_takes_the_place_of_the_usual_band_of_its_reading_alone()
    {
        var target = Targets.Of(Hydration, new Band(new Level(2), new Level(3)));
        var holds = For(Loaf.Walnut).Among([target], [Ask.NetCarbs(2)]);
        Assert.Equal(target, Assert.Single(holds, hold => hold.Balance == Hydration));
        Assert.Contains(holds, hold => hold is { Id: "richness", FromCaller: false });
        Assert.Contains(holds, hold => hold is { Id: "net-carbohydrate", FromCaller: true });
    }

    [Theory]
    // Half as sweet: less sweetener than the usual three quarters, and never more than 1.35 of it. Half as sweet again: the other way.
    [InlineData(null, 0.5, false, true)]
    [InlineData(1.5, null, true, false)]
    // As sweet as it is: the usual mass is kept on both sides.
    [InlineData(0.9, 1.1, true, true)]
    public void The_mass_of_the_sweetener_gives_way_to_the_side_that_sweetness_goes(double? low, double? high, bool keepsLow, bool keepsHigh)
    {
        var sweetness = Find("sweetness");
        var holds = For(Loaf.Muffins).Among([Targets.Of(sweetness, Shares(low, high, Read(sweetness, Loaf.Muffins)))], []);
        var mass = holds.Single(hold => hold.Balance is RoleMass { Role: Role.Sweetener });
        Assert.Equal(keepsLow ? 0.75 : null, mass.Band.Low?.Value);
        Assert.Equal(keepsHigh ? 1.35 : null, mass.Band.High?.Value);
        // A band that gave way no longer hangs on the loaf's own reading.
        Assert.Equal(keepsLow && keepsHigh, mass.IsAnchored);
        var fat = holds.Single(hold => hold.Balance is RoleMass { Role: Role.Fat });
        Assert.Equal((0.75, 1.35), (fat.Band.Low!.Value.Value, fat.Band.High!.Value.Value));
    }

    [Fact]
    public void A_loaf_is_given_none_of_what_it_has_none_of_but_flour_gel_liquid_and_egg()
    {
        // The walnut loaf has soda and cream of tartar and no sweetener, the muffins have both sweetener and baking powder, the
        // yeast loaf leavens with neither acid nor soda.
        Assert.Empty(NewRoles(Loaf.Walnut, "sweetness"));
        Assert.Equal([Role.Sweetener], NewRoles(Loaf.Muffins, "sweetness"));
        Assert.Equal([Role.Acid, Role.Base], NewRoles(Loaf.Walnut, "leavening"));
        Assert.Equal([Role.Acid, Role.Base], NewRoles(Loaf.Muffins, "leavening"));
        Assert.Empty(NewRoles(Loaf.Yeast, "leavening"));
        var plain = Bowl.Of(("almond-meal", 200), ("erythritol", 0), ("butter", 0));
        Assert.Equal([Role.Egg, Role.Gel, Role.Liquid], NewRoles(plain, "eggs"));
        Assert.Equal([Role.Flour], NewRoles(plain, "richness"));
        Assert.Empty(NewRoles(plain, "sweetness"));
        Assert.Equal([Role.Fat, Role.Flour], NewRoles(Loaf.Walnut, "richness", "richness"));
    }

    private static Targets For(Formula formula) => new(TestKitchen.Bakehouse.Balances, formula);

    private static Role[] NewRoles(Formula formula, params string[] ids) => [.. For(formula).NewRoles(ids.Select(Find)).OrderBy(role => role.ToString(), StringComparer.Ordinal)];

    private static Band Shares(double? low, double? high, double own) =>
        new(low is { } floor ? new Level(floor * own) : null, high is { } ceiling ? new Level(ceiling * own) : null);

    private static Balance Find(string id) => TestKitchen.Bakehouse.Balances.Find(id)!;

    private static double Read(Balance balance, Formula formula) => balance.Read(formula, formula, Draws.Typical)!.Value.Value;
}
