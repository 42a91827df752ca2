using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Balances;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Nutrition;

public sealed class PortionTests
{
    private const double Slices = 12;

    /// <summary>Mass of the baked loaf: 600 g of batter less 10 % [g].</summary>
    private const double BakedGrams = 540;

    private static readonly ReferenceTable ByHand = ReferenceTable.Read("Nutrition/Reference/loaf-summed-by-hand.csv");

    private static readonly Formula Bread = Bowl.Of(
        ("almond-meal", 200), ("flaxseed-ground", 50), ("butter", 50), ("water", 96), ("salt", 4)).WithEggs(4) with
    {
        BakeLoss = new Percent(10),
    };

    public static TheoryData<string> Rows => [.. ByHand.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_loaf_holds_what_its_lines_hold_by_the_table(string name) =>
        AssertAgrees(name, WholeLoaf(Bread), share: 1);

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_slice_is_a_twelfth_of_the_loaf(string name) =>
        AssertAgrees(name, WholeLoaf(Bread).Share(1 / Slices), share: 1 / Slices);

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_hundred_grams_are_counted_on_the_baked_loaf_and_not_on_the_batter(string name) =>
        AssertAgrees(name, WholeLoaf(Bread).Share(100 / BakedGrams), share: 100 / BakedGrams);

    [Fact]
    public void The_oven_takes_water_and_nothing_else()
    {
        var batter = WholeLoaf(Bread with { BakeLoss = null });
        var baked = WholeLoaf(Bread);

        Assert.Equal(60, (batter.Water - baked.Water).Value, 9);
        Assert.Equal(60, (batter.Mass - baked.Mass).Value, 9);
        Assert.Equal(batter with { Water = baked.Water, Mass = baked.Mass }, baked);
    }

    [Fact]
    public void A_loaf_that_is_baked_bone_dry_holds_no_water_and_owes_none()
    {
        // 100 g of almonds hold 4.41 g of water; a loss of 10 g cannot all be water.
        var crisp = Bowl.Of(("almond-meal", 100)) with { BakeLoss = new Percent(10) };

        Assert.Equal(0, WholeLoaf(crisp).Water.Value);
    }

    [Fact]
    public void Erythritol_weighs_as_carbohydrate_and_polyol_but_not_as_net_carbs()
    {
        // 50 g of erythritol: all of it a polyol by its nature, and the trade's convention takes all of it off.
        var sweet = WholeLoaf(Bowl.Of(("erythritol", 50)));

        Assert.Equal(0, sweet.NetCarbohydrate!.Value.Value, 9);
        Assert.Equal(sweet.Carbohydrate.Value, sweet.Polyols.Value, 9);
        Assert.InRange(sweet.Polyols.Value, 49, 50);
    }

    [Fact]
    public void What_one_line_does_not_state_cannot_be_told_of_the_loaf()
    {
        var stated = Invented.Of("stated", Role.Flour, (Fact.Sugars, 5), (Fact.Sodium, 1));
        var silent = stated.NotKnowing(Fact.Sugars).NotKnowing(Fact.Fibre);
        var loaf = WholeLoaf(Bowls.Weigh(10, (stated, 100), (silent, 100)));

        Assert.Null(loaf.Sugars);
        Assert.Null(loaf.Fibre);
        // Net carbohydrate takes fibre off, so it cannot be told either; carbohydrate alone would not do.
        Assert.Null(loaf.NetCarbohydrate);
        Assert.NotNull(loaf.Sodium);
        Assert.NotNull(WholeLoaf(Bowls.Weigh(10, (stated, 100))).NetCarbohydrate);
    }

    private static Portion WholeLoaf(Formula formula) =>
        Portion.WholeLoaf(formula, TestKitchen.Bakehouse.Balances.NetCarbohydrate);

    private static void AssertAgrees(string name, Portion portion, double share)
    {
        var row = ByHand[name];
        var whole = Figure(portion, row["nutrient"]) / share;
        Assert.True(row.Agrees(whole), row.Against(whole));
    }

    private static double Figure(Portion portion, string nutrient) => nutrient switch
    {
        "energyKcal" => portion.EnergyKcal.Value,
        "protein" => portion.Protein.Value,
        "fat" => portion.Fat.Value,
        "saturatedFat" => portion.SaturatedFat!.Value.Value,
        "carbohydrate" => portion.Carbohydrate.Value,
        "fibre" => portion.Fibre!.Value.Value,
        "sugars" => portion.Sugars!.Value.Value,
        "sodiumMg" => portion.Sodium!.Value.Value * 1000,
        "netCarbohydrate" => portion.NetCarbohydrate!.Value.Value,
        "water" => portion.Water.Value,
        "mass" => portion.Mass.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(nutrient), nutrient, "not a nutrient of a portion"),
    };
}
