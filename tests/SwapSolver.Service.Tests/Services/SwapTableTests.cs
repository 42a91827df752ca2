using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;
using Verdict = SwapSolver.V1.CheckSwapResponse.Types.Verdict;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class SwapTableTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task Only_swaps_that_balance_stand_in_the_table_and_each_says_what_else_changes()
    {
        var request = new PrintSwapTableRequest { Formula = Bakes.Hazelnut, Ingredients = { "ingredients/butter", "ingredients/cream-of-tartar" } };
        var response = await kitchen.Service.Cards.PrintSwapTableAsync(request);
        var rows = response.Markdown.Split('\n').Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(2).ToList();

        Assert.All(response.Swaps, swap => Assert.NotEqual(Verdict.DoesNotBalance, swap.Verdict));
        Assert.Equal(response.Swaps.Count, rows.Count);
        Assert.True(response.Swaps.Count < response.Judged && response.Judged == response.Pairs);
        Assert.Contains(rows, row => row.StartsWith("| unsalted butter | 30 g ghee | nothing else | About ghee", StringComparison.Ordinal));
        Assert.Contains("Nothing of it is free-from", response.Markdown, StringComparison.Ordinal);
        Assert.False(response.HasHtml);
    }

    [Fact]
    public async Task The_same_table_comes_as_a_page()
    {
        var response = await kitchen.Service.Cards.PrintSwapTableAsync(
            new PrintSwapTableRequest { Name = "formulas/hazelnut-tin-loaf", Ingredients = { "ingredients/butter" }, Format = Format.Html });

        Assert.StartsWith("<!DOCTYPE html>", response.Html, StringComparison.Ordinal);
        Assert.Equal(response.Swaps.Count, response.Html.Split("<tr><th scope=\"row\"").Length - 1);
    }

    [Fact]
    public async Task What_no_table_can_be_is_refused_with_every_mistake()
    {
        var refusal = await Refusal.Of(() => kitchen.Service.Cards.PrintSwapTableAsync(
            new PrintSwapTableRequest { Formula = Bakes.Hazelnut, Ingredients = { "ingredients/gravel" }, Format = Format.Csv, Locale = "xx-YY" }));

        refusal.Names("ingredients[0]", "gravel", "did you mean");
        refusal.Names("format", "Csv", "HTML");
        refusal.Names("locale", "xx-YY", "did you mean");
    }
}
