using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Tables.Tests;

/// <summary>The table of the USDA, put in as it lies in its file.</summary>
public sealed class UsdaFoodsTests
{
    private static readonly TableReading Reading = TestTables.Reader.Read(new TableSlice(TestTables.FileOf("usda-sr-baking-foods.csv")));

    public static TheoryData<string> Rows => [.. TestTables.Usda.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_row_comes_out_to_the_printed_digit_and_a_blank_stays_unknown(string name)
    {
        var row = TestTables.Usda[name];
        Printed.AssertIsIn(row, Reading.Foods.Single(food => food.UsdaFoodNumber == row["ndb_no"]));
    }

    [Fact]
    public void Every_row_goes_in()
    {
        Assert.Equal(TableFormat.Foods, Reading.Format);
        Assert.Empty(Reading.Problems);
        Assert.Equal(TestTables.Usda.Rows.Length, Reading.Rows.Length);
    }

    [Fact]
    public void A_plain_table_has_no_column_for_alcohol_acid_or_gas_and_the_name_says_what_the_rest_is()
    {
        // The rest is 100 g less the printed parts, added up here from the table itself.
        foreach (var number in TestTables.NotWhole)
        {
            var row = TestTables.Usda.Rows.Single(one => one["ndb_no"] == number);
            string[] whole = ["water_g", "protein_g", "fat_g", "ash_g", "carbohydrate_by_difference_g"];
            var rest = 100 - whole.Sum(column => decimal.Parse(row[column], CultureInfo.InvariantCulture));
            var food = Reading.Foods.Single(one => one.UsdaFoodNumber == number);
            var figure = food.Figures[number == "02050" ? Fact.Alcohol : Fact.Other];

            Assert.Equal((double)rest, figure.Range.Typical, 1e-9);
            Assert.Equal(Mark.Calculated, figure.Mark);
            Assert.True(figure.Range.Low < figure.Range.Typical && figure.Range.High >= figure.Range.Typical);
        }
    }

    [Theory]
    // Sugar is all that these hold of digestible carbohydrate: what the table counts by difference beyond sugars and fibre is
    // acid (leavening notes of the project, "SR data traps": cream of tartar, citrus juice and vinegar are no net carbs).
    [InlineData("02048")]
    [InlineData("02053")]
    [InlineData("02050")]
    [InlineData("09152")]
    [InlineData("18372")]
    [InlineData("18373")]
    public void Acid_that_the_table_counts_as_carbohydrate_is_no_net_carb(string number)
    {
        var row = TestTables.Usda.Rows.Single(one => one["ndb_no"] == number);
        var ingredient = TestTables.IngredientOf(Reading.Foods.Single(one => one.UsdaFoodNumber == number));
        var formula = new Formula("bowl", [new Line(ingredient, new Grams(100))], 1, null, null, null);

        var net = TestKitchen.Bakehouse.Balances.NetCarbohydrate.Read(formula, formula, Draws.Typical)!.Value.Value;

        Assert.InRange(net, 0, double.Parse(row["sugars_g"], CultureInfo.InvariantCulture) + 0.25);
    }

    [Theory]
    // 5 % acetic acid is 0.83 mmol a gram (60.05 g/mol, IUPAC); soda 11.9 and cream of tartar 5.31 mmol a gram by their formulas.
    [InlineData("02053", "acid", 0.83)]
    [InlineData("18373", "acid", 5.31)]
    [InlineData("18372", "base", 11.9)]
    public void Acids_and_soda_of_a_table_leaven(string number, string what, double millimolesPerGram)
    {
        var ingredient = TestTables.IngredientOf(Reading.Foods.Single(one => one.UsdaFoodNumber == number));
        var range = ingredient.RangeOf(what == "acid" ? Fact.Acid : Fact.Base)!.Value;

        Assert.InRange(millimolesPerGram, range.Low, range.High);
        Assert.Equal(millimolesPerGram, range.Typical, millimolesPerGram * 0.05);
        Assert.True(ingredient.Usage.OnlyWhenNamed, "the shipped one stands there already");
    }

    [Fact]
    public void A_gap_that_the_name_does_not_explain_is_refused_still()
    {
        var reading = TestTables.Read(
            "long_description,water_g,energy_kcal,protein_g,fat_g,carbohydrate_by_difference_g,ash_g",
            "\"Salad dressing, with cider vinegar\",60,90,0,5,10,1",
            "\"Vinegar, malt\",70,20,0,0,1,0.2");

        Assert.Equal([2, 3], reading.Problems.Select(problem => problem.Line));
    }

    [Fact]
    public void They_go_in_once_somebody_says_what_the_rest_is()
    {
        // Vanilla extract is a third of alcohol, vinegar holds acid, soda gives off a good half as gas and water.
        foreach (var number in TestTables.NotWhole)
        {
            var row = TestTables.Usda.Rows.Single(one => one["ndb_no"] == number);
            string[] whole = ["water_g", "protein_g", "fat_g", "ash_g", "carbohydrate_by_difference_g"];
            var rest = 100 - whole.Sum(column => decimal.Parse(row[column], CultureInfo.InvariantCulture));
            var (column, fact) = number == "02050" ? ("alcohol_g", Fact.Alcohol) : ("other_g", Fact.Other);
            var reading = TestTables.Read($"{TestTables.Header},{column}", string.Create(CultureInfo.InvariantCulture, $"{row.Text},{rest}"));

            Assert.Empty(reading.Problems);
            var food = Assert.Single(reading.Foods);
            Printed.AssertIsIn(row, food);
            Assert.Equal((double)rest, food.Figures[fact].Range.Typical);
        }
    }

    [Fact]
    public void Missing_fibre_is_missing_in_the_ingredient_too()
    {
        // Sesame flour 12032 has neither fibre nor sugars in the table.
        var ingredient = TestTables.IngredientOf(Reading.Foods.Single(food => food.UsdaFoodNumber == "12032"));

        Assert.Null(ingredient.RangeOf(Fact.Fibre));
        Assert.Null(ingredient.RangeOf(Fact.Sugars));
        Assert.NotNull(ingredient.RangeOf(Fact.Carbohydrate));
    }

    [Fact]
    public void Every_row_becomes_an_ingredient_whose_ranges_stand_in_order() => Assert.All(Reading.Foods, food =>
    {
        var ingredient = TestTables.IngredientOf(food);
        Assert.All(ingredient.Figures, pair => Assert.True(pair.Value.Range.IsInOrder && pair.Value.Range.Low >= 0 && pair.Value.Range.High <= pair.Key.Most, $"{food.Id} {pair.Key}"));
        Assert.False(ingredient.Allergens.AreKnown);
        Assert.True(ingredient.Allergens.MayBe("tree-nuts"));
    });

    [Fact]
    public void The_documented_header_is_that_of_the_table() =>
        Assert.Contains(TestTables.Header, TestTables.FileOf("usda-sr-baking-foods.csv").Split('\n').Select(line => line.Trim()));

    [Fact]
    public void Reading_twice_says_the_same()
    {
        var again = TestTables.Reader.Read(new TableSlice(TestTables.FileOf("usda-sr-baking-foods.csv")));

        Assert.Equal(Reading.Problems.AsEnumerable(), again.Problems);
        Assert.Equal(Reading.Foods.Select(Fingerprint.Of), again.Foods.Select(Fingerprint.Of));
    }

    [Fact]
    public void The_order_of_the_rows_changes_nothing()
    {
        var lines = TestTables.Usda.Rows.Select(row => row.Text).ToArray();
        new Random(20130801).Shuffle(lines);
        var shuffled = TestTables.Read([TestTables.Header, .. lines]);

        Assert.Equal(Reading.Foods.Select(Fingerprint.Of).Order(), shuffled.Foods.Select(Fingerprint.Of).Order());
        Assert.Equal(Reading.Problems.Select(problem => problem.Sentence).Order(), shuffled.Problems.Select(problem => problem.Sentence).Order());
    }

    [Fact]
    public void The_order_of_the_columns_changes_nothing()
    {
        var names = TestTables.Header.Split(',').Reverse().ToList();
        var lines = TestTables.Usda.Rows.Select(row => string.Join(',', names.Select(name => $"\"{row[name]}\"")));
        var turned = TestTables.Read([string.Join(',', names), .. lines]);

        Assert.Equal(Reading.Foods.Select(Fingerprint.Of), turned.Foods.Select(Fingerprint.Of));
    }
}
