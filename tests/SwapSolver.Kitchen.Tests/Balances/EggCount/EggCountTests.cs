using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class EggCountTests
{
    private const string Eggs = "eggs";

    [Fact]
    public void Four_eggs_are_four() => Assert.Equal(4, Bowl.Of(("almond-meal", 200)).WithEggs(4).Reading(Eggs)!.Value, 12);

    [Fact]
    public void Eggs_of_another_size_are_counted_by_their_own()
    {
        var egg = TestKitchen.Ingredient("egg-whole");
        var jumbo = Line.UnitOf(egg, EggSize.JumboUs)!.Value;
        var loaf = Bowl.Of(("almond-meal", 200));
        Assert.Equal(3, (loaf with { Lines = loaf.Lines.Add(new Line(egg, jumbo * 3, EggSize.JumboUs)) }).Reading(Eggs)!.Value, 12);
    }

    [Fact]
    public void A_white_and_a_yolk_beside_whole_eggs_are_about_one_egg_more()
    {
        // USDA SR 26: a large egg weighs 50 g without its shell (row 01123), its white 33 g (01124), its yolk 17 g (01125).
        var loaf = Bowl.Of(("almond-meal", 200)).WithEggs(2).WithCounted("egg-white", 1).WithCounted("egg-yolk", 1);
        Assert.Equal(3, loaf.Reading(Eggs)!.Value, 12);
    }

    [Fact]
    public void A_weighed_egg_is_counted_as_a_large_one() =>
        Assert.Equal(1.5, Bowl.Of(("almond-meal", 200), ("egg-whole", 75)).Reading(Eggs)!.Value, 12);

    [Fact]
    public void An_egg_that_is_not_in_the_bowl_sets_no_size()
    {
        // 33 g of white are one white, though a line says no grams of whole egg.
        var loaf = Bowl.Of(("almond-meal", 200), ("egg-whole", 0)).WithCounted("egg-white", 2);

        Assert.Equal(2, loaf.Reading(Eggs)!.Value, 12);
    }

    [Fact]
    public void A_loaf_without_eggs_has_no_count_and_no_limit()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("water", 100));
        Assert.Null(loaf.Reading(Eggs));
        Assert.Empty(Bowls.Balance(Eggs).Rows(loaf, new Band(null, new Level(2)), Draws.Typical));
    }
}
