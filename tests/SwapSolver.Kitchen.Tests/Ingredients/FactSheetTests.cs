using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Ingredients;

public sealed class FactSheetTests
{
    [Fact]
    public void A_sheet_counts_every_fact_on_one_gram()
    {
        // USDA SR 26, row 12061, per 100 g: 4.41 g of water, 733 mg of potassium, 579 kcal.
        var almonds = TestKitchen.Ingredient("almond-meal").Typical;

        Assert.Equal(0.0441, almonds[Fact.Water], 12);
        Assert.Equal(0.00733, almonds[Fact.Potassium], 12);
        Assert.Equal(5.79, almonds[Fact.Energy], 12);
    }

    [Fact]
    public void Facts_of_a_gram_stay_as_they_are()
    {
        var soda = Invented.Of("soda", Role.Base, (Fact.Base, 11.9), (Fact.WaterBound, 0.5));

        Assert.Equal(11.9, soda.Typical[Fact.Base]);
        Assert.Equal(0.5, soda.Typical[Fact.WaterBound]);
    }

    [Fact]
    public void What_is_none_by_nature_reads_as_nothing() =>
        Assert.Equal(0, TestKitchen.Ingredient("water").Typical[Fact.Fat]);

    [Fact]
    public void What_is_not_known_is_refused_and_not_read_as_nothing()
    {
        var meal = TestKitchen.Ingredient("almond-meal").NotKnowing(Fact.Fat);

        Assert.Null(meal.RangeOf(Fact.Fat));
        Assert.Throws<MissingFactException>(() => meal.Typical[Fact.Fat]);
    }

    [Theory]
    [InlineData(0, 0.04)]
    [InlineData(0.5, 0.05)]
    [InlineData(1, 0.08)]
    public void A_drawn_sheet_stands_where_the_draw_says(double share, double water)
    {
        var vinegar = Invented.Of("vinegar", Role.Acid, Fact.Water, new Range(4, 5, 8));

        Assert.Equal(water, FactSheet.Drawn(vinegar, _ => share)[Fact.Water], 12);
    }
}
