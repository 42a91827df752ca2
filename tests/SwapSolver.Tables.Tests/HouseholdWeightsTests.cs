namespace SwapSolver.Tables.Tests;

public sealed class HouseholdWeightsTests
{
    private const string Header = "ndb_no,amount,measure,grams";

    [Fact]
    public void Every_row_of_the_table_comes_out_as_printed()
    {
        var reading = TestTables.Reader.Read(new TableSlice(TestTables.FileOf("usda-sr-household-weights.csv")));

        Assert.Equal(TableFormat.HouseholdWeights, reading.Format);
        Assert.Empty(reading.Problems);
        Assert.Equal(
            TestTables.Weights.Rows.Select(row => ($"usda-{row["ndb_no"]}", row.Number("amount"), row["measure"], row.Number("grams"))),
            reading.Weights.Select(row => (row.FoodId, (double)row.Measure.Amount, row.Measure.Measure, row.Measure.Grams.Value)));
    }

    [Fact]
    public void A_row_may_name_its_food_by_id()
    {
        var weight = Assert.Single(TestTables.Read("id,amount,measure,grams", "my-hulled-hemp,1/2,cup,80").Weights);

        Assert.Equal(("my-hulled-hemp", 0.5m, "cup", 80.0), (weight.FoodId, weight.Measure.Amount, weight.Measure.Measure, weight.Measure.Grams.Value));
    }

    [Theory]
    [InlineData("12007,0,cup,94", "amount", "is no amount")]
    [InlineData("12007,1/0,cup,94", "amount", "is no amount")]
    [InlineData("12007,-1,cup,94", "amount", "is no amount")]
    [InlineData("12007,a,cup,94", "amount", "is no amount")]
    [InlineData("12007,,cup,94", "amount", "is no amount")]
    [InlineData("12007,1,,94", "measure", "measure is missing")]
    [InlineData("12007,1,cup,", "grams", "grams is missing")]
    [InlineData("12007,1,cup,0", "grams", "weighs nothing")]
    [InlineData("12007,1,cup,-94", "grams", "is below nothing")]
    [InlineData("12007,1,cup,9e4", "grams", "is not a number")]
    [InlineData("12007,1,cup,1000000", "grams", "is above 100000 g")]
    [InlineData(",1,cup,94", "ndb_no", "names no food")]
    [InlineData("7,1,cup,94", "ndb_no", "is no food number")]
    public void A_row_that_weighs_nothing_is_named(string row, string field, string reason)
    {
        var problem = Assert.Single(TestTables.Read(Header, "12014,1,cup,129", row).Problems);

        Assert.Equal((3, field), (problem.Line, problem.Field));
        Assert.Contains(reason, problem.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_weights_of_one_measure_neither_is_believed()
    {
        var reading = TestTables.Read(Header, "12007,1,cup,94", "12007,1,tbsp,5.0", "12007,1,cup,49");

        Assert.Equal("tbsp", Assert.Single(reading.Weights).Measure.Measure);
        Assert.Equal([2, 4], reading.Problems.Select(problem => problem.Line));
        Assert.Equal(2, reading.LeftOut);
    }
}
