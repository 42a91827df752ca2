using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Foods;

public sealed class TableRulesFileTests
{
    private const string File = "practice/tables.json";

    /// <summary>General factors of 21 CFR 101.9(c)(1)(i)(B): 4, 4 and 9 kcal/g. Ends of Agriculture Handbook 74 from memory:
    /// protein 1.83 (cocoa) and 4.36 (egg), fat 8.37 (plants) and 9.02 (meat), carbohydrate up to 4.16 (cereals), alcohol 6.93.</summary>
    [Fact]
    public void The_window_holds_every_published_factor()
    {
        var energy = TableRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)).Energy;

        Assert.All(new[] { 1.83, 4, 4.36 }, factor => Assert.InRange(factor, energy.Protein.Low, energy.Protein.High));
        Assert.All(new[] { 8.37, 9, 9.02 }, factor => Assert.InRange(factor, energy.Fat.Low, energy.Fat.High));
        Assert.All(new[] { 0, 1.33, 4, 4.16 }, factor => Assert.InRange(factor, energy.Carbohydrate.Low, energy.Carbohydrate.High));
        Assert.All(new[] { 0, 2.4, 6.93, 7 }, factor => Assert.InRange(factor, energy.Rest.Low, energy.Rest.High));
    }

    [Theory]
    [InlineData("ends that cross", "\"low\": 1.8, \"typical\": 4", "\"low\": 4.8, \"typical\": 4", "\"proteinKcalPerG\": ^{", "in order")]
    [InlineData("less than nothing", "\"slackPercent\": 5", "\"slackPercent\": -5", "\"slackPercent\": ^-5", "between 0 and 100")]
    [InlineData("more than all of it", "\"mostGPer100G\": 12", "\"mostGPer100G\": 120", "\"mostGPer100G\": ^120", "between 0 and 100")]
    [InlineData("a source that is none", "\"energy-window\"", "\"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    [InlineData("a mark that is none", "\"mark\": \"practice\" },", "\"mark\": \"custom\" },", "\"mark\": ^\"custom\"", "'custom'")]
    public void What_cannot_be_believed_is_shown_where_it_stands(string spoilt, string written, string instead, string place, string says)
    {
        Assert.NotEmpty(spoilt);
        using var folder = new SpoiltFolder();
        var text = folder.Replace(File, written, instead);

        Assert.Throws<DataFaultException>(folder.ReadTableRules).AssertPointsAt(File, text, place, says);
    }
}
