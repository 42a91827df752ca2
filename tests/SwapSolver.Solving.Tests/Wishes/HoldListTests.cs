using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

public sealed class HoldListTests
{
    private static Dictionary<string, Hold> Around(Formula formula, params ReadOnlySpan<Hold> wishes) =>
        HoldList.Around(TestKitchen.Bakehouse.Balances, formula, [.. wishes]).ToDictionary(hold => hold.Id);

    [Fact]
    public void The_bands_lie_around_the_loaf_that_works()
    {
        var tally = new Tally(Loaf.Walnut);
        var holds = Around(Loaf.Walnut);
        Same("hydration", tally.Hydration * 0.94, tally.Hydration * 1.06);
        Same("gas", tally.Gas * 0.90, tally.Gas * 1.10);
        Same("setting-protein", tally.SettingProtein * 0.90, tally.SettingProtein * 1.10);
        Same("gel", tally.Gel * 0.90, tally.Gel * 1.10);
        Same("richness", tally.Richness * 0.85, tally.Richness * 1.15);
        Same("leavening", 0.90, 1.05);
        Same("flour-mass", 0.92, 1.08);
        Same("fat-mass", 0.75, 1.35);
        Same("liquid-mass", 0.75, 1.35);
        Same("batter-mass", 0.95, 1.05);

        // Gas is worked out from molar masses with six digits here and four there.
        void Same(string id, double low, double high)
        {
            Assert.Equal(low, holds[id].Band.Low!.Value.Value, low * 2e-4);
            Assert.Equal(high, holds[id].Band.High!.Value.Value, high * 2e-4);
        }
    }

    [Fact]
    public void Net_carbs_and_salt_are_held_only_where_asked_for()
    {
        Assert.DoesNotContain("net-carbohydrate", Around(Loaf.Walnut).Keys);
        Assert.DoesNotContain("salt", Around(Loaf.Walnut).Keys);
        Assert.Contains("net-carbohydrate", Around(Loaf.Walnut, Ask.NetCarbs(2)).Keys);
    }

    [Fact]
    public void A_loaf_without_sweetener_is_not_held_to_any() =>
        Assert.DoesNotContain("sweetener-mass", Around(Loaf.Walnut).Keys);

    [Fact]
    public void Where_eggs_are_left_out_their_mass_is_free_and_their_work_is_held()
    {
        var holds = Around(Loaf.Walnut, Ask.Without("egg"));
        Assert.DoesNotContain("egg-mass", holds.Keys);
        Assert.Contains("setting-protein", holds.Keys);
        Assert.Contains("egg-mass", Around(Loaf.Walnut, Ask.Without("milk")).Keys);
    }

    [Fact]
    public void Where_flour_is_left_out_its_mass_is_held_all_the_same() =>
        Assert.Contains("flour-mass", Around(Loaf.Walnut, Ask.Without("tree-nuts")).Keys);

    [Fact]
    public void What_stays_is_the_caller_s_own_wish()
    {
        var holds = Around(Loaf.Walnut, Ask.Without("egg"), Ask.NetCarbs(2));
        Assert.Equal(["net-carbohydrate", "without:egg"], holds.Values.Where(hold => hold.FromCaller).Select(hold => hold.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_water_of_four_eggs_is_room_for_as_much_water()
    {
        // Four eggs, 200 g at 76.15 % water (USDA row 01123), are 152.3 g; by 220 g of water that is 0.692 more.
        var holds = HoldList.WithRoomForWater(
            HoldList.Around(TestKitchen.Bakehouse.Balances, Loaf.Walnut, [Ask.Without("egg")]), Loaf.Walnut);
        var liquid = holds.Single(hold => hold.Balance is RoleMass { Role: Role.Liquid });
        Assert.Equal(1.35 + (152.3 / 220), liquid.Band.High!.Value.Value, 1e-9);
        Assert.Equal(0.75, liquid.Band.Low!.Value.Value, 1e-9);
    }

    [Fact]
    public void A_loaf_without_liquid_gets_no_room_for_any()
    {
        var dry = Bowl.Of(("almond-meal", 200), ("butter", 50)).WithEggs(3);
        var holds = HoldList.Around(TestKitchen.Bakehouse.Balances, dry, [Ask.Without("egg")]);
        Assert.Equal(holds, HoldList.WithRoomForWater(holds, dry));
    }

    [Fact]
    public void A_sour_loaf_stretches_its_own_leavening_band()
    {
        // 5 g of soda are 59.5 mmol, 14 g of cream of tartar 74.4: 1.25, and no variant need be better.
        var sour = Loaf.Walnut with
        {
            Lines = [.. Loaf.Walnut.Lines.Select(line => line.Ingredient.Id == "cream-of-tartar" ? line with { Grams = new(14) } : line)],
        };
        var band = Around(sour)["leavening"].Band;
        Assert.Equal(0.90, band.Low!.Value.Value);
        Assert.Equal(14 * (1000 / 188.177) / (5 * (1000 / 84.006)), band.High!.Value.Value, 2e-4);
    }

    [Fact]
    public void The_mass_of_eggs_is_free_where_they_go_with_something_else()
    {
        var holds = Around(Loaf.Walnut, Ask.Without("tree-nuts"), Ask.Without("egg"));
        Assert.DoesNotContain("egg-mass", holds.Keys);
        Assert.Contains("fat-mass", holds.Keys);
    }

    [Fact]
    public void Where_eggs_go_fruit_may_come_in_among_the_flavours()
    {
        var spiced = Loaf.Walnut with { Lines = Loaf.Walnut.Lines.Add(new Line(TestKitchen.Ingredient("cinnamon"), new(3))) };
        Assert.Contains("flavour-mass", Around(spiced, Ask.Without("tree-nuts")).Keys);
        Assert.DoesNotContain("flavour-mass", Around(spiced, Ask.Without("egg")).Keys);
    }

    [Fact]
    public void A_usual_band_hangs_on_the_loaf_s_own_reading_and_one_that_was_widened_does_not()
    {
        var holds = HoldList.Around(TestKitchen.Bakehouse.Balances, Loaf.CocoaCake, [Ask.Without("egg"), Ask.Without("sour-cream")]);
        Assert.All(holds.Where(hold => !hold.FromCaller), hold => Assert.True(hold.IsAnchored, hold.Id));
        var liquid = HoldList.WithRoomForWater(holds, Loaf.CocoaCake).Single(hold => hold.Balance is RoleMass { Role: Role.Liquid });
        Assert.False(liquid.IsAnchored);
        // Four eggs of 200 g at 76.15 % water and 100 g of sour cream at 74.46 % (USDA rows 01123 and 01056), by 40 g of water.
        Assert.Equal(1.35 + ((152.3 + 74.46) / 40), liquid.Band.High!.Value.Value, 1e-9);
    }
}
