using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

/// <summary>How near one thing comes to another by what it brings: here by fat alone, which is grams of fat in a gram of batter, so
/// that every figure is a difference of two rows of the pantry in half widths of a band.</summary>
public sealed class NearnessTests
{
    private const string Almond = "almond-flour-blanched";

    private static readonly Balance Richness = TestKitchen.Bakehouse.Balances.Find("richness")!;

    /// <summary>As much water as flour, so half the flour's fat in a gram.</summary>
    private static readonly Formula Paste = Bowl.Of((Almond, 100), ("water", 100));

    private static readonly double Own = (Fat(Almond) + Fat("water")) / 2;

    [Fact]
    public void A_flour_is_as_far_from_the_flour_that_goes_as_its_fat_is()
    {
        // 15 % either way.
        var nearness = Around(Paste, new Band(new Level(0.85 * Own), new Level(1.15 * Own)), Almond);
        Assert.Equal(0, nearness.Of(TestKitchen.Ingredient(Almond)), 1e-12);
        Assert.Equal(Math.Abs(Fat("coconut-flour") - Fat(Almond)) / (0.15 * Own), nearness.Of(TestKitchen.Ingredient("coconut-flour")), 1e-9);
        Assert.Equal(Math.Abs(Fat("walnut-meal") - Fat(Almond)) / (0.15 * Own), nearness.Of(TestKitchen.Ingredient("walnut-meal")), 1e-9);
    }

    [Fact]
    public void What_comes_in_a_role_takes_the_place_of_what_there_is_of_it()
    {
        var band = new Band(new Level(0.85 * Own), new Level(1.15 * Own));
        var nearness = Around(Paste, band, Almond);
        // A liquid: of the water, though the flour goes. A fat, of which there is none: of what goes.
        Assert.Equal(Math.Abs(Fat("almond-drink-unsweetened") - Fat("water")) / (0.15 * Own), nearness.Of(TestKitchen.Ingredient("almond-drink-unsweetened")), 1e-9);
        Assert.Equal((Fat("butter") - Fat(Almond)) / (0.15 * Own), nearness.Of(TestKitchen.Ingredient("butter")), 1e-9);
        // Nothing goes: of the whole batter.
        Assert.Equal((Fat("butter") - Own) / (0.15 * Own), Around(Paste, band).Of(TestKitchen.Ingredient("butter")), 1e-9);
    }

    [Fact]
    public void Of_two_flours_that_go_the_place_is_their_middle_by_mass_and_a_line_of_no_grams_is_none()
    {
        var three = Bowl.Of((Almond, 150), ("coconut-flour", 50), ("water", 100), ("butter", 0));
        var own = ((1.5 * Fat(Almond)) + (0.5 * Fat("coconut-flour")) + Fat("water")) / 3;
        var middle = ((3 * Fat(Almond)) + Fat("coconut-flour")) / 4;
        var band = new Band(new Level(0.85 * own), new Level(1.15 * own));
        Assert.Equal((Fat("walnut-meal") - middle) / (0.15 * own), Around(three, band, Almond, "coconut-flour").Of(TestKitchen.Ingredient("walnut-meal")), 1e-9);
        // Of two of which one goes, it is that one's place.
        Assert.Equal((Fat("walnut-meal") - Fat("coconut-flour")) / (0.15 * own), Around(three, band, "coconut-flour").Of(TestKitchen.Ingredient("walnut-meal")), 1e-9);
        Assert.Equal((Fat("olive-oil") - Fat("coconut-flour")) / (0.15 * own), Around(three, band, "coconut-flour", "butter").Of(TestKitchen.Ingredient("olive-oil")), 1e-9);
    }

    [Fact]
    public void What_brings_a_missed_reading_back_is_nearer_than_what_is_alike()
    {
        var (fat, lean) = (TestKitchen.Ingredient("butter"), TestKitchen.Ingredient("coconut-flour"));
        // Half the width of two to three times is half of its own.
        var more = Around(Paste, new Band(new Level(2 * Own), new Level(3 * Own)), Almond);
        Assert.Equal(-(Fat("butter") - Fat(Almond)) / (0.5 * Own), more.Of(fat), 1e-9);
        Assert.True(more.Of(lean) > 0);
        // At most half of its own: the width reaches from there to where it stands, so half of it is a quarter.
        var less = Around(Paste, new Band(null, new Level(0.5 * Own)), Almond);
        Assert.Equal((Fat("butter") - Fat(Almond)) / (0.25 * Own), less.Of(fat), 1e-9);
        Assert.True(less.Of(lean) < 0);
        // At least twice its own: from where it stands to there, half of it.
        Assert.Equal(-(Fat("butter") - Fat(Almond)) / (0.5 * Own), Around(Paste, new Band(new Level(2 * Own), null), Almond).Of(fat), 1e-9);
    }

    [Fact]
    public void A_band_without_width_is_counted_in_the_reading_itself()
    {
        var exact = Around(Paste, new Band(new Level(Own), new Level(Own)), Almond);
        Assert.Equal((Fat("butter") - Fat(Almond)) / Own, exact.Of(TestKitchen.Ingredient("butter")), 1e-9);
    }

    [Fact]
    public void A_flour_that_binds_more_water_lies_as_far_as_it_dries_the_batter()
    {
        // Water by water that is bound: what the paste has, and every gram more that is bound asks for so much water again.
        var hydration = TestKitchen.Bakehouse.Balances.Find("hydration")!;
        var (almond, coconut) = (TestKitchen.Ingredient(Almond).Typical, TestKitchen.Ingredient("coconut-flour").Typical);
        var own = (almond[Fact.Water] + 1) / almond[Fact.WaterBound];
        var band = new Band(new Level(0.9 * own), new Level(1.1 * own));
        var nearness = new Nearness(Paste, [new Hold(hydration.Id, hydration, band, FromCaller: false)], [TestKitchen.Ingredient(Almond)]);
        var missing = (own * (coconut[Fact.WaterBound] - almond[Fact.WaterBound])) - (coconut[Fact.Water] - almond[Fact.Water]);
        Assert.True(missing > 0);
        Assert.Equal(missing / (0.1 * own), nearness.Of(TestKitchen.Ingredient("coconut-flour")), 1e-9);
    }

    [Fact]
    public void Readings_add_up_and_what_the_loaf_has_no_reading_of_says_nothing()
    {
        var band = new Band(new Level(0.85 * Own), new Level(1.15 * Own));
        var once = new Hold(Richness.Id, Richness, band, FromCaller: false);
        var leavening = TestKitchen.Bakehouse.Balances.Find("leavening")!;
        var none = new Hold(leavening.Id, leavening, new Band(new Level(0.9), new Level(1.05)), FromCaller: false);
        var butter = TestKitchen.Ingredient("butter");
        var by = new Nearness(Paste, [once, none, Ask.Without("tree-nuts"), once], [TestKitchen.Ingredient(Almond)]);
        Assert.Equal(2 * Around(Paste, band, Almond).Of(butter), by.Of(butter), 1e-9);
        // No fat at all, and none may be: nothing is counted in nothing.
        var water = Bowl.Of(("baking-soda", 100));
        Assert.Equal(0, Around(water, Band.Nothing).Of(butter));
    }

    private static Nearness Around(Formula formula, Band band, params string[] gone) =>
        new(formula, [new Hold(Richness.Id, Richness, band, FromCaller: false)], [.. gone.Select(TestKitchen.Ingredient)]);

    /// <summary>Fat by the pantry [g/g].</summary>
    private static double Fat(string id) => TestKitchen.Ingredient(id).RangeOf(Fact.Fat)!.Value.Typical / 100;
}
