using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class LeaveningTests
{
    private const string Leavening = "leavening";

    private static readonly Ingredient Acid = Invented.Of("acid", Role.Acid, (Fact.Acid, 10));

    private static readonly Ingredient Soda = Invented.Of("soda", Role.Base, (Fact.Base, 10));

    [Fact]
    public void Fifteen_grams_of_vinegar_use_up_a_tenth_of_ten_grams_of_soda()
    {
        // 15 g x 5 g/100 g / 60.05 g/mol = 12.5 mmol of acid; 10 g / 84.006 g/mol = 119.0 mmol of soda; 12.5 / 119.0 = 0.105.
        var bowl = Bowl.Of(("baking-soda", 10), ("vinegar-distilled", 15));

        Assert.Equal(12.5, 15 * Bowls.Typical("vinegar-distilled", Fact.Acid), 1);
        Assert.Equal(119.0, 10 * Bowls.Typical("baking-soda", Fact.Base), 1);
        Assert.Equal(0.105, bowl.Reading(Leavening)!.Value, 3);
    }

    [Fact]
    public void A_quarter_spoon_of_soda_with_half_a_spoon_of_cream_of_tartar_is_neutralised_to_58_percent()
    {
        // A kitchen rule for one spoon of baking powder. Spoons by USDA SR 26: soda 4.6 g (row 18372), cream of tartar
        // 3.0 g (row 18373). 1.5 g / 188.18 g/mol = 7.97 mmol on 1.15 g / 84.006 g/mol = 13.69 mmol: 58 %.
        const double CreamOfTartarSpoon = 3.0;
        var sodaSpoon = TestKitchen.Ingredient("baking-soda").HouseholdMeasures
            .Single(measure => measure.Measure == "tsp" && measure.Amount == 1).Grams.Value;
        var bowl = Bowl.Of(("baking-soda", sodaSpoon / 4), ("cream-of-tartar", CreamOfTartarSpoon / 2));

        Assert.Equal(0.58, bowl.Reading(Leavening)!.Value, 2);
    }

    [Fact]
    public void Baking_powder_comes_with_its_own_acid()
    {
        // Worked back from the sodium and phosphorus of USDA SR 26, row 18369, assuming that the maker balances it.
        Assert.Equal(1.0, Bowl.Of(("baking-powder-double-acting", 9), ("water", 100)).Reading(Leavening)!.Value, 12);
    }

    [Fact]
    public void Doubling_every_line_leaves_leavening_unchanged() =>
        Assert.Equal(Loaf.Walnut.Reading(Leavening)!.Value, Loaf.Walnut.Scaled(2).Reading(Leavening)!.Value, 12);

    [Fact]
    public void Where_there_is_no_soda_there_is_no_leavening() =>
        Assert.Null(Bowl.Of(("vinegar-distilled", 15), ("almond-meal", 200)).Reading(Leavening));

    [Theory]
    [InlineData(0.90)]
    [InlineData(0.97)]
    [InlineData(1.05)]
    public void A_balanced_loaf_leaves_the_band_from_ninety_to_a_hundred_and_five_percent(double acidBySoda)
    {
        var band = BandOf(acidBySoda);

        Assert.Equal(0.90, band.Low!.Value.Value, 12);
        Assert.Equal(1.05, band.High!.Value.Value, 12);
    }

    [Fact]
    public void A_variant_of_a_soapy_loaf_may_be_as_soapy_and_no_more()
    {
        var band = BandOf(0.7);

        Assert.Equal(0.70, band.Low!.Value.Value, 12);
        Assert.Equal(1.05, band.High!.Value.Value, 12);
    }

    [Fact]
    public void A_variant_of_a_sour_loaf_may_be_as_sour_and_no_more()
    {
        var band = BandOf(1.4);

        Assert.Equal(0.90, band.Low!.Value.Value, 12);
        Assert.Equal(1.40, band.High!.Value.Value, 12);
    }

    [Fact]
    public void A_yeast_loaf_with_a_spoon_of_vinegar_keeps_its_own_rows_though_it_has_no_soda()
    {
        // 10 g x 10 mmol/g of acid and no base: sour, but it is the loaf that is known to work.
        var loaf = Bowls.Weigh(10, (Acid, 10));
        var balance = Bowls.Balance(Leavening);
        var rows = balance.Rows(loaf, balance.Band(loaf, Draws.Typical), Draws.Typical);

        Assert.All(rows, row => Assert.True(
            row.Coefficient(Acid.Typical).Value * 10 >= row.Least, $"the loaf itself is refused on the side {row.Side}"));
    }

    [Fact]
    public void A_loaf_with_neither_acid_nor_soda_lets_nothing_be_sour()
    {
        var meal = Invented.Of("meal", Role.Flour);

        Assert.Equal(1.05, HighOf(Bowls.Weigh(10, (meal, 200)))!.Value, 12);
        // An acid that was left out is none.
        Assert.Equal(1.05, HighOf(Bowls.Weigh(10, (meal, 200), (Acid, 0)))!.Value, 12);
        Assert.Null(HighOf(Bowls.Weigh(10, (meal, 200), (Acid, 1))));

        static double? HighOf(Formula loaf) => Bowls.Balance(Leavening).Band(loaf, Draws.Typical).High?.Value;
    }

    private static Band BandOf(double acidBySoda)
    {
        // 10 mmol/g on either side: 100 g x r of acid to 100 g of soda read r.
        var reference = Bowls.Weigh(10, (Acid, 100 * acidBySoda), (Soda, 100));
        Assert.Equal(acidBySoda, reference.Reading(Leavening)!.Value, 12);
        return Bowls.Balance(Leavening).Band(reference, Draws.Typical);
    }
}
