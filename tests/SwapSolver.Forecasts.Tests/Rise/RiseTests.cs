using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class RiseTests
{
    public static TheoryData<string> Loaves => [.. Loaf.All.Select(loaf => loaf.Name)];

    [Fact]
    public void Without_acid_half_of_the_gas_comes_in_the_oven_and_the_forecast_says_so()
    {
        // 2 NaHCO3 gives Na2CO3, CO2 and H2O. 10 g are 119.0 mmol.
        var rise = Bowl.Of(("almond-flour-blanched", 200), ("water", 200), ("baking-soda", 10)).Rises();

        Assert.Equal(0, (rise.Freed.InMixing + rise.Freed.OnBench + rise.Freed.InOven).Value);
        Assert.Equal(119.0 / 2, rise.Freed.ByHeat.Value, 0.05);
        Assert.Equal(rise.Freed.ByHeat, rise.Freed.Total);
        Assert.Equal(0, rise.Neutralised!.Value.Value.Value);
        Assert.True(rise.Says("rise-no-acid"));
        Assert.True(rise.Says("rise-soda-left"));
        Assert.All(rise.Gas.Where(point => point.Stage != RiseStage.Oven), point => Assert.Equal(0, point.Freed.Value));
    }

    [Fact]
    public void Cream_of_tartar_frees_most_of_its_gas_in_the_bowl_and_a_pyrophosphate_in_the_oven()
    {
        // Shares of a trade table from memory: cream of tartar 70 % in mixing, SAPP-28 30 %.
        var fast = Bowl.Of(("water", 200), ("baking-soda", 4), ("cream-of-tartar", 9)).Rises();
        var slow = Bowl.Of(("water", 200), ("baking-soda", 4), ("sodium-acid-pyrophosphate", 5.6)).Rises();

        Assert.True(fast.Freed.InMixing.Value > fast.Freed.Total.Value / 2);
        Assert.True(slow.Freed.InOven.Value > slow.Freed.Total.Value / 2);
        Assert.True(fast.WorkingWindow!.Value.Value.Value < slow.WorkingWindow!.Value.Value.Value);
    }

    [Fact]
    public void An_aluminium_sulphate_powder_waits_longer_than_lemon_juice()
    {
        var powder = Loaf.Muffins.Rises();
        var lemon = Bowl.Of(("almond-flour-blanched", 200), ("water", 100), ("lemon-juice", 65), ("baking-soda", 4)).WithEggs(2).Rises();

        Assert.True(powder.WorkingWindow!.Value.Value.Value > lemon.WorkingWindow!.Value.High.Value);
        Assert.InRange(lemon.WorkingWindow.Value.Value.Value, 2, 6);
    }

    [Fact]
    public void A_long_wait_loses_gas_and_the_forecast_says_so()
    {
        var soon = Loaf.Walnut.Rises(usual => usual with { Bench = new Minutes(0) });
        var late = Loaf.Walnut.Rises(usual => usual with { Bench = new Minutes(40) });

        Assert.Equal(0, soon.LostOnBench.Value, 1e-9);
        Assert.True(late.LostOnBench.Value > 30);
        Assert.False(soon.Says("rise-waited"));
        Assert.True(late.Says("rise-waited"));
        Assert.True(late.Gas[^1].Held.Value < soon.Gas[^1].Held.Value);
        Assert.Equal(soon.Gas[^1].Freed.Value, late.Gas[^1].Freed.Value, 1e-9);
    }

    [Fact]
    public void At_the_end_of_the_window_a_tenth_of_the_gas_is_lost()
    {
        var window = Loaf.Walnut.Rises().WorkingWindow!.Value.Value;
        var waited = Loaf.Walnut.Rises(usual => usual with { Bench = window });

        Assert.Equal(10, waited.LostOnBench.Value, 0.1);
    }

    [Theory]
    [MemberData(nameof(Loaves))]
    public void The_curve_only_climbs_and_ends_at_all_the_gas(string name)
    {
        var rise = Loaf.All.Single(loaf => loaf.Name == name).Formula.Rises();

        Assert.Equal(rise.Gas.Select(point => point.At.Value).Order(), rise.Gas.Select(point => point.At.Value));
        Assert.Equal(rise.Gas.Select(point => point.Freed.Value).Order(), rise.Gas.Select(point => point.Freed.Value));
        Assert.Equal(rise.VolumeAtBowl.Value, rise.Gas[^1].Freed.Value, 1e-6);
        Assert.All(rise.Gas, point => Assert.InRange(point.Held.Value, 0, point.Freed.Value + 1e-9));
        Assert.Equal(0, rise.Gas[0].Freed.Value);
    }

    [Fact]
    public void Doubling_the_loaf_doubles_the_gas_and_leaves_as_much_soda_in_a_hundred_grams()
    {
        var one = Loaf.CocoaCake.Rises();
        var two = Loaf.CocoaCake.Scaled(2).Rises();

        Assert.Equal(2 * one.VolumeAtBowl.Value, two.VolumeAtBowl.Value, 1e-6);
        Assert.Equal(one.SodaLeftPer100Grams.Typical.Value, two.SodaLeftPer100Grams.Typical.Value, 1e-9);
        Assert.Equal(one.WorkingWindow!.Value.Value.Value, two.WorkingWindow!.Value.Value.Value, 1e-6);
    }

    [Fact]
    public void Soda_left_is_counted_by_the_baked_loaf()
    {
        // 2 g of 400 g that lose an eighth: 0.57 g in 100 g.
        var loaf = Bowl.Of(("water", 398), ("baking-soda", 2)) with { BakeLoss = new Percent(12.5) };

        Assert.Equal(2 / 3.5, loaf.Rises().SodaLeftPer100Grams.Typical.Value, 0.001);
    }

    [Fact]
    public void Bakers_ammonia_leaves_whole_and_no_soda_is_left()
    {
        // Ammonium bicarbonate breaks down by heat into ammonia, carbon dioxide and water (American Society of Baking).
        var rise = Bowl.Of(("almond-flour-blanched", 200), ("water", 60), ("ammonium-bicarbonate", 5)).Rises();

        Assert.Equal(5000 / 79.055, rise.Freed.ByHeat.Value, 0.01 * 5000 / 79.055);
        Assert.Equal(0, rise.SodaLeftPer100Grams.Typical.Value);
        Assert.False(rise.Says("rise-no-acid"));
    }

    [Fact]
    public void A_yeast_loaf_says_that_its_gas_is_not_counted()
    {
        var rise = Loaf.Yeast.Rises();

        Assert.True(rise.Says("rise-yeast"));
        Assert.True(rise.Says("rise-no-leavening"));
        Assert.Null(rise.WorkingWindow);
        Assert.Null(rise.Neutralised);
    }

    [Fact]
    public void A_dry_mix_says_that_it_has_no_pH()
    {
        var rise = Bowl.Of(("baking-soda", 30), ("cream-of-tartar", 60)).Rises();

        Assert.Null(rise.Acidity);
        Assert.True(rise.Says("rise-too-dry"));
        Assert.False(rise.Says("rise-ph-estimate"));
    }

    [Fact]
    public void Sunflower_turns_green_where_soda_is_left_and_not_where_acid_uses_it_up()
    {
        // Greening of sunflower crumbs grows with the pH (Liang, Tran and Were 2018).
        var green = Bowl.Of(("sunflower-seed-flour", 200), ("water", 180), ("baking-soda", 6)).WithEggs(2).Rises();
        var grey = Bowl.Of(("sunflower-seed-flour", 200), ("water", 180), ("baking-soda", 4), ("cream-of-tartar", 12)).WithEggs(2).Rises();

        Assert.True(green.Says("rise-colour"));
        Assert.False(grey.Says("rise-colour"));
        Assert.False(grey.Says("rise-colour-perhaps"));
    }

    [Fact]
    public void A_pH_is_never_given_without_the_word_that_it_is_no_figure_of_safety() =>
        Assert.Contains("food safety", Assert.Single(Loaf.Walnut.Rises().Cautions, caution => caution.Id == "rise-ph-estimate").Text, StringComparison.Ordinal);

    [Fact]
    public void Every_sentence_is_filled() => Assert.All(
        Loaf.All.SelectMany(loaf => loaf.Formula.Rises(usual => usual with { Altitude = new Metres(2000), Bench = new Minutes(30) }).Cautions),
        caution => Assert.DoesNotContain('{', caution.Text));

    [Theory]
    [InlineData(0, 5, 30)]
    [InlineData(3, -1, 30)]
    [InlineData(3, 5, 0)]
    public void Times_that_cannot_be_are_refused(double mixing, double bench, double oven) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Loaf.Walnut.Rises(usual => usual with
        {
            Mixing = new Minutes(mixing),
            Bench = new Minutes(bench),
            Oven = new Minutes(oven),
        }));

    [Fact]
    public void The_facts_that_are_looked_at_are_the_callers()
    {
        var strong = ForecastKitchen.Rise.Foretell(
            Loaf.Sunflower, RiseConditions.Usual(ForecastKitchen.Practice, ForecastKitchen.SeaLevel), ingredient => FactSheet.Drawn(ingredient, _ => 1));

        Assert.True(strong.Neutralised!.Value.Value.Value > Loaf.Sunflower.Rises().Neutralised!.Value.Value.Value);
    }
}
