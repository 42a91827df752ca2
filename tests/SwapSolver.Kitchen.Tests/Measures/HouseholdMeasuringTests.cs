using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

public sealed class HouseholdMeasuringTests
{
    public static TheoryData<MeasureSystem> Systems => [MeasureSystem.UsCustomary, MeasureSystem.Metric, MeasureSystem.Australian, MeasureSystem.UkImperial];

    [Theory]
    [MemberData(nameof(Systems))]
    public void Measures_come_back_near_the_grams_that_they_stand_for(MeasureSystem system)
    {
        var measuring = new HouseholdMeasuring(TestCards.Room.Measures, system);
        var told = 0;
        foreach (var ingredient in TestKitchen.Bakehouse.Pantry.Ingredients)
        {
            foreach (var grams in new[] { 3, 7, 13, 20, 45, 100, 180, 260, 500 })
            {
                if (measuring.Of(ingredient, new Grams(grams)) is { } measure)
                {
                    told++;
                    // Half of the smallest part of the smallest measure that was taken is the farthest that it can miss.
                    var miss = Math.Abs(measure.Weighs.Typical.Value - grams) / grams;
                    Assert.True(miss <= 0.26, $"{grams} g of {ingredient.Id}: {measure.Number} {measure.Unit} weigh {measure.Weighs.Typical.Value}");
                    Assert.True(measure.Weighs.Low <= measure.Weighs.Typical && measure.Weighs.Typical <= measure.Weighs.High, ingredient.Id);
                }
            }
        }

        Assert.True(told > 500, $"{told} measures were told");
    }

    /// <summary>A cup of 250 mL and a spoon of 15 mL; water at 1 g/mL within two parts in a thousand (USDA release 26: 237 g in
    /// a US cup of 236.6 mL).</summary>
    [Theory]
    [InlineData(MeasureSystem.Metric, 250, "1", "cup", "")]
    [InlineData(MeasureSystem.Metric, 125, "1/2", "cup", "")]
    [InlineData(MeasureSystem.UsCustomary, 237, "1", "cup", "")]
    [InlineData(MeasureSystem.UsCustomary, 260, "1", "cup", "1 1/2")]
    [InlineData(MeasureSystem.Australian, 40, "2", "tablespoon", "")]
    [InlineData(MeasureSystem.UkImperial, 15, "1", "tablespoon", "")]
    [InlineData(MeasureSystem.Metric, 5, "1", "teaspoon", "")]
    // The parts that cups come in, and the next whole one where that is nearer.
    [InlineData(MeasureSystem.Metric, 62.5, "1/4", "cup", "")]
    [InlineData(MeasureSystem.Metric, 83.3, "1/3", "cup", "")]
    [InlineData(MeasureSystem.Metric, 166.7, "2/3", "cup", "")]
    [InlineData(MeasureSystem.Metric, 187.5, "3/4", "cup", "")]
    [InlineData(MeasureSystem.Metric, 495, "2", "cup", "")]
    // 332 g are 1.4 US cups: the most that is not above it, 316 g, and a spoon of 14.8 g.
    [InlineData(MeasureSystem.UsCustomary, 332, "1 1/3", "cup", "1")]
    // The United Kingdom has no cup: fluid ounces of 28.41 mL.
    [InlineData(MeasureSystem.UkImperial, 99.4, "3 1/2", "fluid ounce", "")]
    [InlineData(MeasureSystem.UkImperial, 284, "10", "fluid ounce", "")]
    public void Water_is_measured_by_the_cups_and_spoons_of_its_place(MeasureSystem system, double grams, string number, string unit, string rest)
    {
        var measure = new HouseholdMeasuring(TestCards.Room.Measures, system).Of(TestKitchen.Ingredient("water"), new Grams(grams))!;

        Assert.Equal((number, unit, rest), (measure.Number, measure.Unit, measure.Rest?.Number ?? string.Empty));
    }

    [Theory]
    [InlineData(125, 0.5, false)]
    [InlineData(250, 1, false)]
    [InlineData(375, 1.5, true)]
    public void A_cup_and_a_half_are_several_and_weigh_so_much(double grams, double count, bool isSeveral)
    {
        var measure = new HouseholdMeasuring(TestCards.Room.Measures, MeasureSystem.Metric).Of(TestKitchen.Ingredient("water"), new Grams(grams))!;

        Assert.Equal((count, isSeveral), (measure.Count.Middle, measure.IsSeveral));
        Assert.Equal(grams, measure.Weighs.Typical.Value, 1e-9);
    }

    [Fact]
    public void What_pours_is_measured_as_a_liquid_and_a_dry_acid_as_a_powder()
    {
        // A kitchen's own vinegar stands on no list: it pours, since it is mostly water; citric acid is as sour and dry.
        var fillings = TestCards.Room.Measures.Fillings;
        var vinegar = Foods.Shelf.Of(Foods.Shelf.Bag(Foods.Shelf.Figures((Fact.Water, 94), (Fact.Protein, 0), (Fact.Fat, 0), (Fact.Ash, 0), (Fact.Carbohydrate, 6), (Fact.Fibre, 0), (Fact.Energy, 20)), role: Role.Acid));
        var acid = Foods.Shelf.Of(Foods.Shelf.Bag(Foods.Shelf.Figures((Fact.Water, 0), (Fact.Protein, 0), (Fact.Fat, 0), (Fact.Ash, 0), (Fact.Carbohydrate, 100), (Fact.Fibre, 0), (Fact.Energy, 250)), role: Role.Acid));

        Assert.Equal(fillings.Liquid, fillings.Of(vinegar, null));
        Assert.Equal(fillings.Powder, fillings.Of(acid, null));
    }

    [Fact]
    public void Less_than_the_smallest_spoon_is_weighed() =>
        Assert.Null(new HouseholdMeasuring(TestCards.Room.Measures, MeasureSystem.Metric).Of(TestKitchen.Ingredient("xanthan-gum"), new Grams(0.1)));
}
