using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class DailyValueTests
{
    private static readonly ReferenceTable Sample = ReferenceTable.Read("Labels/Reference/fda-sample-label.csv");

    private static readonly ReferenceTable Older = ReferenceTable.Read("Labels/Reference/older-daily-values.csv");

    private static readonly ReferenceTable Values = ReferenceTable.Read("Labels/Reference/daily-values.csv");

    private static readonly ReferenceTable Minerals = ReferenceTable.Read("Labels/Reference/mineral-percents.csv");

    public static TheoryData<string> SampleRows => [.. Sample.Names];

    public static TheoryData<string> OlderRows => [.. Older.Names];

    public static TheoryData<string> ValueRows => [.. Values.Names];

    public static TheoryData<string> MineralRows => [.. Minerals.Names];

    [Theory]
    [MemberData(nameof(SampleRows))]
    public void The_sample_label_of_the_authority_comes_out(string name)
    {
        var row = Sample[name];
        var share = TestLabels.Line("us", row["nutrient"]).DailyValue!.ShareOf(new PanelAmount(row.Number("amount")));

        ReferenceLedger.Note(row, "percent", row.Number("percent"), share.Value, 0);
        Assert.True(share.Value == row.Number("percent"), row.Against(share.Value));
    }

    [Theory]
    [MemberData(nameof(OlderRows))]
    public void Older_labels_come_out_by_their_older_daily_values(string name)
    {
        var row = Older[name];
        var older = TestLabels.Line("us", row["nutrient"]).DailyValue! with { Amount = new PanelAmount(row.Number("dailyValue")) };
        var share = older.ShareOf(new PanelAmount(row.Number("amount")));

        ReferenceLedger.Note(row, "percent", row.Number("percent"), share.Value, 0);
        Assert.True(share.Value == row.Number("percent"), row.Against(share.Value));
    }

    [Theory]
    [MemberData(nameof(ValueRows))]
    public void A_daily_value_is_the_one_of_the_law(string name)
    {
        var row = Values[name];

        ReferenceLedger.Note(row, row["law"], row.Number("dailyValue"), TestLabels.Line(row["law"], row["nutrient"]).DailyValue!.Amount.Value, 0);
        Assert.Equal(row.Number("dailyValue"), TestLabels.Line(row["law"], row["nutrient"]).DailyValue!.Amount.Value);
    }

    [Theory]
    [MemberData(nameof(MineralRows))]
    public void Minerals_go_in_steps_of_two_five_and_ten_percent(string name)
    {
        var row = Minerals[name];
        var calcium = TestLabels.Line("us", "calcium").DailyValue! with { Amount = new PanelAmount(100) };

        Assert.Equal(row.Number("printed"), calcium.ShareOf(new PanelAmount(row.Number("percent"))).Value);
    }

    [Theory]
    [InlineData("transFat")]
    [InlineData("sugars")]
    [InlineData("protein")]
    public void The_United_States_print_no_percentage_of_trans_fat_total_sugars_or_protein(string nutrient) =>
        Assert.Null(TestLabels.Line("us", nutrient).DailyValue);
}
