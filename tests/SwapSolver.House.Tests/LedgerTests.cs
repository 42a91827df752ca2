namespace SwapSolver.House.Tests;

/// <summary>The ledger of published figures is made from the tests, and is as long as the tables.</summary>
public sealed class LedgerTests
{
    /// <summary>Tables whose rows are words or no figure of ours; their tests name them.</summary>
    private static readonly string[] OfWords = ["allergen-lists.csv", "usda-baking-foods.csv", "lines-of-pieces.csv"];

    private static readonly string Page = SourceTree.Text("tests/REFERENCES.md");

    [Fact]
    public void Four_hundred_published_figures_and_more_are_checked()
    {
        var all = Page.Split('\n').First(line => line.StartsWith("| all |", StringComparison.Ordinal)).Split('|', StringSplitOptions.TrimEntries);
        Assert.True(int.Parse(all[2], System.Globalization.CultureInfo.InvariantCulture) >= 400);
    }

    [Fact]
    public void Every_table_of_published_figures_stands_in_the_ledger() => Assert.All(
        SourceTree.Files("tests", "*.csv")
            .Where(path => path.Contains("/Reference/", StringComparison.Ordinal) && SourceTree.Text(path).Contains("# mark: published", StringComparison.Ordinal))
            .Select(path => Path.GetFileName(path))
            .Except(OfWords),
        table => Assert.Contains($": {table}\n", Page, StringComparison.Ordinal));
}
