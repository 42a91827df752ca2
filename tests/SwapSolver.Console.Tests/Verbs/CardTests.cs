using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class CardTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_card_is_printed_as_it_came_and_nothing_else()
    {
        var ran = (await BuiltConsole.Run("card", Hazelnut, "--measures", "au", "--locale", "en-AU")).Ends(0);

        Assert.StartsWith("# Hazelnut tin loaf\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Food Standards Code", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_card_is_kept_in_a_file_whole_or_not_at_all()
    {
        var folder = Directory.CreateTempSubdirectory("cards-");
        try
        {
            var file = Path.Combine(folder.FullName, "loaf.html");
            await File.WriteAllTextAsync(file, "an older card");
            var response = (await BuiltConsole.Run("card", Hazelnut, "--format", "html", "--out", file, "--json")).Ends(0).Read<PrintCardResponse>();

            Assert.Equal(response.Html, await File.ReadAllTextAsync(file));
            Assert.Equal([file], Directory.GetFiles(folder.FullName));
            (await BuiltConsole.Run("card", Hazelnut, "--out", folder.FullName)).Refuses(folder.FullName, "folder");
            (await BuiltConsole.Run("card", Hazelnut, "--out", Path.Combine(folder.FullName, "none", "loaf.md"))).Refuses("no such folder");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_script_reads_label_allergens_and_cautions_beside_the_card()
    {
        var response = (await BuiltConsole.Run("card", "formulas/cocoa-cake", "--label", "eu", "--card-version", "3", "--json")).Ends(0).Read<PrintCardResponse>();

        Assert.StartsWith("# Cocoa cake", response.Markdown, StringComparison.Ordinal);
        Assert.Equal("3", response.Version);
        Assert.Contains(response.Label, line => line.Nutrient == "salt" && line.HasAmount);
        Assert.NotEmpty(response.Allergens.Eu);
        Assert.NotEmpty(response.Cautions);
    }

    [Fact]
    public async Task A_chart_is_printed_as_a_table_for_readers()
    {
        var ran = (await BuiltConsole.Run("chart", Hazelnut, "--ingredient", "butter", "--format", "markdown", "--locale", "de-DE")).Ends(0);

        Assert.StartsWith("# Swaps for Hazelnut tin loaf", ran.Out, StringComparison.Ordinal);
        Assert.Contains("| Instead of | use | and change | Mind |", ran.Out, StringComparison.Ordinal);
        (await BuiltConsole.Run("chart", Hazelnut, "--out", "table.md")).Refuses("--format");
    }

    [Theory]
    [InlineData("--format", "pdf", "markdown")]
    [InlineData("--format", "label-only", "markdown")]
    [InlineData("--measures", "martian", "metric")]
    [InlineData("--locale", "xx-YY", "xx-YY")]
    [InlineData("--variant-of", "no-such-loaf.json", "no-such-loaf.json")]
    public async Task What_no_card_can_be_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("card", Hazelnut, option, value)).Refuses(shown);
}
