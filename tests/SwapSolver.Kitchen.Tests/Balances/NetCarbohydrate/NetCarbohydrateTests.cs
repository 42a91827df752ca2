using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class NetCarbohydrateTests
{
    private static readonly ReferenceTable Published =
        ReferenceTable.Read("Balances/NetCarbohydrate/Reference/net-carbohydrate.csv");

    private static NetCarbohydrate Rule => TestKitchen.Bakehouse.Balances.NetCarbohydrate;

    public static TheoryData<string> Rows => [.. Published.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_hundred_grams_bring_the_net_carbs_of_the_table(string name)
    {
        var row = Published[name];
        var netCarbs = NetCarbsOf(row["ingredient"]);

        Assert.True(row.Agrees(netCarbs), row.Against(netCarbs));
    }

    [Fact]
    public void One_slice_has_the_net_carbs_of_the_loaf_by_the_number_of_slices()
    {
        // 200 g of almonds x 9.05 g/100 g = 18.1 g in 10 slices. The mass of the loaf does not come into it.
        var loaf = Bowls.Weigh(10, (TestKitchen.Ingredient("almond-meal"), 200));

        Assert.Equal(1.81, Rule.Read(loaf, loaf, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void Cutting_the_same_loaf_thinner_lowers_the_net_carbs_of_a_slice()
    {
        var loaf = Bowls.Weigh(10, (TestKitchen.Ingredient("almond-meal"), 200));
        var thinner = loaf with { Slices = 20 };

        Assert.Equal(0.905, Rule.Read(thinner, thinner, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void More_fibre_than_carbohydrate_is_no_debt()
    {
        // Measured apart, 30 g of fibre may stand in 25 g of carbohydrate: the rest is nothing, and not minus 5 g.
        var husk = Invented.Of("husk", Role.Gel, (Fact.Carbohydrate, 25), (Fact.Fibre, 30));

        Assert.Equal(0, Rule.Numerator(husk.Typical).Value);
    }

    [Fact]
    public void Half_of_a_sugar_alcohol_counts_but_nothing_of_erythritol_and_allulose()
    {
        // The trade's third convention with allulose: less erythritol, less half of the other polyols, less allulose.
        // 100 g of carbohydrate with 30 g of erythritol among 50 g of polyols and 10 g of allulose:
        // 100 - 30 - 20 / 2 - 10 = 50 g.
        var blend = Invented.Of(
            "blend", Role.Sweetener, (Fact.Carbohydrate, 100), (Fact.Polyols, 50), (Fact.Erythritol, 30), (Fact.Allulose, 10));

        Assert.Equal(0.50, Rule.Numerator(blend.Typical).Value, 12);
    }

    [Fact]
    public void No_acid_counts_as_carbs()
    {
        Assert.All(
            (string[])["cream-of-tartar", "citric-acid", "citric-acid-monohydrate", "tartaric-acid", "malic-acid", "fumaric-acid",
                "adipic-acid", "ascorbic-acid", "lactic-acid-88", "glucono-delta-lactone"],
            id => Assert.Equal(0, NetCarbsOf(id), 12));
    }

    [Theory]
    [InlineData("lemon-juice")]
    [InlineData("lime-juice")]
    [InlineData("vinegar-distilled")]
    [InlineData("vinegar-cider")]
    public void A_sour_liquid_brings_only_its_sugars(string id) =>
        Assert.Equal(TestKitchen.Ingredient(id).RangeOf(Fact.Sugars)!.Value.Typical, NetCarbsOf(id), 9);

    [Fact]
    public void A_loaf_has_no_limit_on_net_carbs_unless_the_baker_sets_one() =>
        Assert.True(Rule.Band(Loaf.Walnut, Draws.Typical).IsOpen);

    private static double NetCarbsOf(string id) => 100 * Rule.Numerator(TestKitchen.Ingredient(id).Typical).Value;
}
