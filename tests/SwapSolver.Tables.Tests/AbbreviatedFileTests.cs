using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Tables.Tests;

/// <summary>The abbreviated file of the USDA: carets between fields, tildes around text, no header.</summary>
public sealed class AbbreviatedFileTests
{
    /// <summary>The first line of the file, from memory; each figure that our copies of the tables have is held against them below.</summary>
    private const string Butter = "~01001~^~BUTTER,WITH SALT~^15.87^717^0.85^81.11^2.11^0.06^0.0^0.06^24^0.02^2^24^24^643^0.09^0.000^0.000^1.0^0.0^0.005^0.034^0.042^0.110^0.003^3^0^3^3^18.8^0.17^2499^684^671^0^158^0^0^0^2.32^0.0^0^7.0^51.368^21.021^3.043^215^5.0^~1 pat,  (1\" sq, 1/3\" high)~^14.2^~1 tbsp~^0";

    /// <summary>Our names of the fields 3 to 16 and 45 to 48 of the file, by its documentation (release 28, 2015,
    /// "Abbreviated File", as its readers repeat it); the plain table has them in nearly the same order.</summary>
    private const string Front = "water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,sugars_g,calcium_mg,iron_mg,magnesium_mg,phosphorus_mg,potassium_mg,sodium_mg";

    private const string Back = "saturated_fat_g,monounsaturated_fat_g,polyunsaturated_fat_g,cholesterol_mg";

    [Fact]
    public void The_rows_of_the_table_are_the_same_foods_in_either_file()
    {
        var plain = TestTables.Reader.Read(new TableSlice(TestTables.FileOf("usda-sr-baking-foods.csv")));
        var abbreviated = TestTables.Reader.Read(new TableSlice(string.Concat(TestTables.Usda.Rows.Select(row => $"{Abbreviated(row)}\r\n"))));

        Assert.Equal(TableFormat.UsdaAbbreviated, abbreviated.Format);
        Assert.Equal(plain.Foods.Select(Fingerprint.Of), abbreviated.Foods.Select(Fingerprint.Of));
        Assert.Empty(abbreviated.Problems);
    }

    [Fact]
    public void The_line_of_butter_is_read_with_its_household_measures()
    {
        var reading = TestTables.Read(Butter);
        Assert.Empty(reading.Problems);
        var food = Assert.Single(reading.Foods);
        var row = TestTables.Usda.Rows.Single(one => one["ndb_no"] == "01001");

        Assert.Equal("BUTTER,WITH SALT", food.Name);
        Assert.All(TestTables.Kept, column => Assert.Equal(row.Number(column.Column), food.Figures[column.Fact].Range.Typical));
        Assert.All(food.HouseholdMeasures, measure =>
        {
            var weight = TestTables.Weights.Rows.Single(one => one["ndb_no"] == "01001" && one["measure"].Split(' ')[0] == measure.Measure.Split([' ', ','])[0]);
            Assert.Equal(weight.Number("grams"), measure.Grams.Value);
            Assert.Equal(weight.Number("amount"), (double)measure.Amount);
        });
        Assert.Equal(["pat, (1\" sq, 1/3\" high)", "tbsp"], food.HouseholdMeasures.Select(measure => measure.Measure));
    }

    [Theory]
    [InlineData("~1 cup, sliced~", "1", "cup, sliced")]
    [InlineData("~.5 cup~", "0.5", "cup")]
    [InlineData("~1/2 cup~", "0.5", "cup")]
    [InlineData("~cup~", "1", "cup")]
    public void A_measure_is_an_amount_and_a_word(string written, string amount, string measure)
    {
        var food = Assert.Single(TestTables.Read(Butter.Replace("~1 tbsp~", written, StringComparison.Ordinal)).Foods);

        Assert.Equal((amount, measure), (food.HouseholdMeasures[1].Amount.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture), food.HouseholdMeasures[1].Measure));
    }

    [Theory]
    [InlineData("a field too few", "^14.2^", "^", "", "52 fields")]
    [InlineData("a field too many", "^14.2^", "^14.2^1^", "", "54 fields")]
    [InlineData("no water", "^15.87^", "^^", "Water", "Water is missing")]
    [InlineData("a comma in a decimal", "^15.87^", "^15,87^", "Water", "is not a number")]
    [InlineData("another food's fat", "^81.11^", "^71.11^", "Water", "not to 100 g")]
    [InlineData("more saturated fat than fat", "^51.368^", "^91.368^", "FA_Sat", "above its whole")]
    [InlineData("kilojoules for kilocalories", "^717^", "^3000^", "Energ_Kcal", "is above 910")]
    [InlineData("a weight of nothing", "^14.2^", "^0^", "GmWt_2", "weighs nothing")]
    [InlineData("a tilde that is not closed", "~^~BUTTER,WITH SALT~^", "~^~BUTTER,WITH SALT^", "", "quotes")]
    public void A_line_that_cannot_be_true_is_named_with_the_file_s_own_field(string spoilt, string written, string instead, string field, string reason)
    {
        var reading = TestTables.Read("~01002~^~BUTTER,WHIPPED~" + Butter[Butter.IndexOf("^15.87", StringComparison.Ordinal)..], Butter.Replace(written, instead, StringComparison.Ordinal));

        Assert.True(reading.Foods.Length == 1, spoilt);
        var problem = Assert.Single(reading.Problems);
        Assert.Equal((2, field), (problem.Line, problem.Field));
        Assert.Contains(reason, problem.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_without_a_point_or_a_nought_in_front_are_read() =>
        Assert.Equal(0.5, Assert.Single(TestTables.Read(Butter.Replace("^2.11^", "^.5^", StringComparison.Ordinal).Replace("^15.87^", "^17.^", StringComparison.Ordinal)).Foods).Figures[Fact.Ash].Range.Typical);

    private static string Abbreviated(ReferenceRow row)
    {
        var fields = Enumerable.Repeat(string.Empty, 53).ToArray();
        fields[0] = $"~{row["ndb_no"]}~";
        fields[1] = $"~{row["long_description"]}~";
        Front.Split(',').Select(column => row[column]).ToArray().CopyTo(fields, 2);
        Back.Split(',').Select(column => row[column]).ToArray().CopyTo(fields, 44);
        fields[49] = fields[51] = "~~";
        return string.Join('^', fields);
    }
}
