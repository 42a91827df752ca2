using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Formulas;

public sealed class FormulaTests
{
    private static readonly Formula Bread = Bowl.Of(
        ("almond-meal", 150), ("flaxseed-ground", 50), ("psyllium-husk", 20), ("water", 180)).WithEggs(4);

    [Fact]
    public void The_batter_weighs_what_its_lines_weigh()
    {
        // 150 + 50 + 20 + 180 + 4 x 50.
        Assert.Equal(600, Bread.BatterMass.Value);
    }

    [Fact]
    public void The_baked_loaf_weighs_the_batter_less_what_the_oven_takes()
    {
        // 11 % of 600 g are 66 g.
        Assert.Equal(534, (Bread with { BakeLoss = new Percent(11) }).BakedMass.Value, 9);
        Assert.Equal(600, Bread.BakedMass.Value);
    }

    [Fact]
    public void Bakers_percentages_are_counted_on_all_the_flours()
    {
        // Flours 150 + 50 = 200 g: almonds 75 %, flax 25 %, husk 10 %, water 90 %, eggs 100 %.
        Assert.Equal([75, 25, 10, 90, 100], Bread.Lines.Select(line => Math.Round(Bread.BakersPercentage(line)!.Value.Value, 9)));
    }

    [Fact]
    public void Without_flour_there_are_no_bakers_percentages()
    {
        var meringue = Bowl.Of(("egg-white", 100), ("sugar", 200));

        Assert.All(meringue.Lines, line => Assert.Null(meringue.BakersPercentage(line)));
    }

    [Fact]
    public void Bakers_percentages_do_not_change_with_the_size_of_the_loaf()
    {
        var large = Bread.Scaled(2.5);

        Assert.Equal(
            Bread.Lines.Select(line => Math.Round(Bread.BakersPercentage(line)!.Value.Value, 9)),
            large.Lines.Select(line => Math.Round(large.BakersPercentage(line)!.Value.Value, 9)));
    }

    [Fact]
    public void A_loaf_half_as_large_again_takes_half_as_much_again_of_everything()
    {
        // Six eggs in place of four; the slices stay the baker's to count.
        var large = Bread.Scaled(1.5);

        Assert.Equal([225, 75, 30, 270, 300], large.Lines.Select(line => line.Grams.Value));
        Assert.Equal(6, large.Lines[^1].Count);
        Assert.Equal(12, large.Slices);
    }

    [Fact]
    public void Water_poured_in_twice_is_one_line_of_water()
    {
        var merged = Bowl.Of(("almond-meal", 100), ("water", 80), ("salt", 4), ("water", 40)).Merged();

        Assert.Equal(["almond-meal", "water", "salt"], merged.Lines.Select(line => line.Ingredient.Id));
        Assert.Equal([100, 120, 4], merged.Lines.Select(line => line.Grams.Value));
    }

    [Fact]
    public void Two_ways_to_write_one_bowl_weigh_the_same_to_the_last_digit_and_each_gets_its_order_back()
    {
        // 0.1 + 0.2 + 0.3 is another double than 0.3 + 0.2 + 0.1.
        var one = Bowl.Of(("salt", 0.1), ("water", 0.2), ("almond-meal", 0.3), ("water", 0.1));
        var other = Bowl.Of(("almond-meal", 0.3), ("water", 0.1), ("water", 0.2), ("salt", 0.1));
        Assert.Equal(one.InOrderOfIds().BatterMass.Value, other.InOrderOfIds().BatterMass.Value);

        var withButter = one.InOrderOfIds() with { Lines = [.. one.InOrderOfIds().Lines.Prepend(new Line(TestKitchen.Ingredient("butter"), new Grams(5)))] };
        Assert.Equal(["salt", "water", "almond-meal", "butter"], withButter.InOrderOf(one).Lines.Select(line => line.Ingredient.Id));
    }

    [Fact]
    public void Eggs_of_one_size_stay_counted_when_lines_are_merged()
    {
        var merged = Bread.WithEggs(1).Merged();

        Assert.Equal(5, merged.Lines[^1].Count);
        Assert.Equal(EggSize.LargeUs, merged.Lines[^1].Size);
    }

    [Fact]
    public void Eggs_of_two_sizes_become_a_weight_when_lines_are_merged()
    {
        // Four of 50 g and 60 g weighed out.
        var egg = TestKitchen.Ingredient("egg-whole");
        var merged = (Bread with { Lines = Bread.Lines.Add(new Line(egg, new Grams(60), EggSize.LargeEu)) }).Merged();

        Assert.Null(merged.Lines[^1].Size);
        Assert.Equal(260, merged.Lines[^1].Grams.Value);
    }

    [Fact]
    public void The_mass_of_a_role_or_an_ingredient_is_that_of_all_its_lines()
    {
        var loaf = Bread with { Lines = Bread.Lines.Add(new Line(TestKitchen.Ingredient("almond-meal"), new Grams(10))) };

        Assert.Equal(210, loaf.MassOf(Role.Flour).Value);
        Assert.Equal(160, loaf.MassOf(TestKitchen.Ingredient("almond-meal")).Value);
        Assert.Equal(0, loaf.MassOf(TestKitchen.Ingredient("butter")).Value);
    }
}
