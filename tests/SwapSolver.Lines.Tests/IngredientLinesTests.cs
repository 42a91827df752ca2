using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

public sealed class IngredientLinesTests
{
    [Fact]
    public void A_cup_without_a_system_is_a_US_cup_and_says_so() =>
        Assert.Contains(One("1 cup water", null).Assumed, words => words.Contains("US customary cup of 236.59 mL", StringComparison.Ordinal));

    [Theory]
    // The table weighs a US cup at 237 g and a litre at 1000 g: 240, 250 and 284.13 mL by the litre.
    [InlineData(MeasureSystem.UsCustomary, 237)]
    [InlineData(MeasureSystem.UsLabelling, 240)]
    [InlineData(MeasureSystem.Metric, 250)]
    [InlineData(MeasureSystem.Australian, 250)]
    [InlineData(MeasureSystem.UkImperial, 284.13)]
    public void A_cup_is_the_cup_of_the_system_that_is_said(MeasureSystem system, double grams)
    {
        var reading = One("1 cup water", system);
        Assert.Equal(grams, reading.Grams!.Value.Typical.Value, 0.01);
        Assert.Empty(reading.Assumed);
    }

    [Fact]
    public void An_Australian_tablespoon_holds_a_third_more_than_a_metric_one() =>
        // 20 mL against 15 mL.
        Assert.Equal(20.0 / 15, One("1 tbsp water", MeasureSystem.Australian).Grams!.Value.Typical / One("1 tbsp water", MeasureSystem.Metric).Grams!.Value.Typical, 1e-9);

    [Fact]
    public void A_weight_is_the_weight_give_or_take_a_gram_of_the_scale()
    {
        var grams = One("150 g butter", null).Grams!.Value;
        Assert.Equal((149, 150, 151), (grams.Low.Value, grams.Typical.Value, grams.High.Value));
    }

    [Fact]
    public void A_cup_of_powder_may_weigh_fifteen_percent_more_or_less()
    {
        // 112 g a cup by our estimate: 0.85 and 1.15 of it are 95.2 and 128.8 g.
        var grams = One("1 cup coconut flour", null).Grams!.Value;
        Assert.Equal(95.2, grams.Low.Value, 1e-9);
        Assert.Equal(128.8, grams.High.Value, 1e-9);
    }

    [Fact]
    public void A_cup_of_water_may_weigh_three_percent_more_or_less()
    {
        var grams = One("1 cup water", null).Grams!.Value;
        Assert.Equal((237 * 0.97, 237 * 1.03), (grams.Low.Value, grams.High.Value));
    }

    [Fact]
    public void A_range_of_amounts_widens_the_range_of_grams()
    {
        var grams = One("2-3 large eggs", null).Grams!.Value;
        Assert.True(grams.Low < new Grams(100) && grams.High > new Grams(150));
        Assert.Equal(125, grams.Typical.Value);
    }

    [Fact]
    public void Eggs_that_are_counted_stay_counted() => Assert.Equal(EggSize.ExtraLargeUs, One("2 extra large eggs", null).Egg);

    [Theory]
    [InlineData(MeasureSystem.UkImperial, "large eggs", EggSize.LargeEu)]
    [InlineData(MeasureSystem.Metric, "eggs", EggSize.MediumEu)]
    [InlineData(MeasureSystem.UsCustomary, "large eggs", EggSize.LargeUs)]
    [InlineData(null, "large EU eggs", EggSize.LargeEu)]
    [InlineData(null, "eggs, UK medium", EggSize.MediumEu)]
    public void Large_is_the_size_of_the_country(MeasureSystem? system, string eggs, EggSize size) => Assert.Equal(size, One($"2 {eggs}", system).Egg);

    [Fact]
    public void A_misspelt_flour_comes_back_with_the_right_one_first()
    {
        var reading = One("1 cup almnd flour", null);
        Assert.Null(reading.Ingredient);
        Assert.Contains("almond", reading.Candidates[0].Ingredient.Id, StringComparison.Ordinal);
        Assert.InRange(reading.Candidates[0].Score, 0.7, 0.99);
        Assert.Equal(reading.Candidates.Select(candidate => candidate.Score).OrderDescending(), reading.Candidates.Select(candidate => candidate.Score));
    }

    [Fact]
    public void A_French_spoon_is_refused_by_name() => Assert.Contains("French", One("3 c. à soupe", null).Problem, StringComparison.Ordinal);

    [Fact]
    public void What_was_taken_for_granted_of_a_name_is_said() => Assert.Contains("whole", One("200 ml milk", null).Assumed);

    [Theory]
    [InlineData("20 g butter, for the tin", "does not go into the bowl", true)]
    [InlineData("1 egg, beaten, to glaze", "does not go into the bowl", true)]
    [InlineData("1 cup almond flour, plus extra for dusting", "does not go into the bowl", false)]
    [InlineData("1 tin coconut milk", "does not go into the bowl", false)]
    [InlineData("1 tbsp sesame seeds (optional)", "optional", true)]
    public void What_may_not_go_into_the_bowl_is_counted_in_and_told(string line, string words, bool told) =>
        Assert.Equal(told, One(line, MeasureSystem.Metric).Assumed.Any(assumed => assumed.Contains(words, StringComparison.Ordinal)));

    [Theory]
    [InlineData("Dry:", "heading")]
    [InlineData("1 200 g water", "1200 g")]
    [InlineData("11/2 cups water", "1 1/2")]
    [InlineData("200 g butter, 50 g oil", "a line for each")]
    [InlineData("3 large eggs (about 165g in shell)", "without shell")]
    public void A_line_that_is_not_read_says_what_to_write(string line, string words) =>
        Assert.Contains(words, One(line, null).Problem, StringComparison.Ordinal);

    [Fact]
    public void Eggs_of_no_size_are_counted_by_the_kitchen()
    {
        var eggs = TestLines.Reader.Count(Amount.Of(3), TestKitchen.Ingredient("egg-whole"), null);
        // A large US egg is 50 g without its shell (USDA SR 26).
        Assert.Equal((150, EggSize.LargeUs), (eggs.Grams!.Value.Typical.Value, eggs.Egg!.Value));
        Assert.Equal(EggSize.MediumEu, TestLines.Reader.Count(Amount.Of(3), TestKitchen.Ingredient("egg-whole"), MeasureSystem.Metric).Egg);
    }

    [Fact]
    public void An_amount_and_a_unit_weigh_what_the_line_weighs()
    {
        var weighed = TestLines.Reader.Weigh(Amount.Of(1.5), "tsp", TestKitchen.Ingredient("baking-soda"), null);
        // 4.6 g a teaspoon (USDA SR 26).
        Assert.Equal(6.9, weighed.Grams!.Value.Typical.Value, 1e-9);
        Assert.Contains("bushel", TestLines.Reader.Weigh(Amount.One, "bushel", TestKitchen.Ingredient("salt"), null).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_ingredient_of_the_pantry_is_found_by_its_own_id_and_name() =>
        Assert.All(TestKitchen.Bakehouse.Pantry.Ingredients.Where(ingredient => !ingredient.Id.Any(char.IsDigit)), ingredient =>
        {
            Assert.Equal(ingredient, One($"10 g {ingredient.Id.Replace('-', ' ')}", null).Ingredient);
            Assert.Equal(ingredient, One($"10 g {ingredient.Name}", null).Ingredient);
        });

    [Fact]
    public void Every_name_of_the_table_means_its_ingredient() =>
        Assert.All(
            TestLines.Tables.Names.Names.Where(name => !name.Name.Any(char.IsDigit)),
            name => Assert.True(One($"10 g {name.Name}", null).Ingredient?.Id == name.IngredientId, name.ToString()));

    [Fact]
    public void Nothing_that_only_sounds_like_ours_is_taken() =>
        Assert.All(TestLines.Tables.Names.OtherThings, other => Assert.True(TestLines.Reader.Read($"10 g {other.Name}", null).All(reading => reading.Ingredient is null), other.ToString()));

    private static LineReading One(string line, MeasureSystem? system) => Assert.Single(TestLines.Reader.Read(line, system));
}
