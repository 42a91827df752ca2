using System.Globalization;
using SwapSolver.Kitchen.Ingredients;

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
        if (!TestTables.NotWhole.Contains(row["ndb_no"]))
        {
            TestTables.AssertPrinted(row, Reading.Foods.Single(food => food.UsdaFoodNumber == row["ndb_no"]));
        }
    }

    [Fact]
    public void Only_rows_that_make_no_whole_are_left_out_and_each_is_named_by_its_line()
    {
        Assert.Equal(TableFormat.Foods, Reading.Format);
        Assert.Equal(TestTables.Usda.Rows.Length, Reading.Rows.Length + Reading.LeftOut);
        Assert.Equal(
            TestTables.Usda.Rows.Where(row => TestTables.NotWhole.Contains(row["ndb_no"])).Select(row => int.Parse(row.Name.Split(':')[1], CultureInfo.InvariantCulture)),
            Reading.Problems.Select(problem => problem.Line));
        Assert.All(Reading.Problems, problem =>
        {
            Assert.Equal("water_g", problem.Field);
            Assert.Contains("not to 100 g", problem.Reason, StringComparison.Ordinal);
            Assert.Contains("other_g", problem.WayOut, StringComparison.Ordinal);
        });
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
            TestTables.AssertPrinted(row, food);
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
