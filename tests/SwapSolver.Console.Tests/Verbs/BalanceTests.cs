using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class BalanceTests
{
    [Theory]
    [InlineData("hazelnut-tin-loaf")]
    [InlineData("seeded-free-form-loaf")]
    [InlineData("almond-rolls")]
    [InlineData("vanilla-muffins")]
    [InlineData("cocoa-cake")]
    public async Task Every_demo_formula_is_measured(string id)
    {
        var response = (await BuiltConsole.Run("balance", BuiltConsole.Demo(id), "--json")).Ends(0).Read<BalanceFormulaResponse>();
        Assert.NotEmpty(response.Readings);
        Assert.All(response.Readings, reading => Assert.Equal(Reading.Types.Standing.Inside, reading.Standing));
        Assert.True(response.Nutrition.PerSlice.EnergyKcal > 0);
    }

    [Fact]
    public async Task A_loaf_that_is_out_of_balance_is_still_an_answer()
    {
        using var loaf = FormulaFile.Of(""" "ingredient": "ingredients/baking-soda", "grams": 5 """);
        var response = (await BuiltConsole.Run("balance", loaf.Location, "--json")).Ends(0).Read<BalanceFormulaResponse>();
        Assert.Contains(response.Readings, reading => reading.Standing == Reading.Types.Standing.Below);
    }

    [Fact]
    public async Task A_formula_can_come_in_on_standard_input()
    {
        var text = await File.ReadAllTextAsync(BuiltConsole.Demo("almond-rolls"));
        var piped = (await BuiltConsole.RunWithInput(text, "balance", "-", "--json")).Ends(0).Read<BalanceFormulaResponse>();
        var stored = (await BuiltConsole.Run("balance", "formulas/almond-rolls", "--json")).Ends(0).Read<BalanceFormulaResponse>();
        Assert.Equal(stored, piped);
    }

    [Fact]
    public async Task A_baker_reads_the_bowl_the_readings_and_the_cautions()
    {
        var ran = (await BuiltConsole.Run("balance", BuiltConsole.Demo("hazelnut-tin-loaf"))).Ends(0);
        Assert.Empty(ran.Error);
        // 260 g of water on 240 g of flours (180 + 60) are 108.3 %.
        Assert.Matches(@"water\s+260\s+108", ran.Out);
        Assert.Contains("hydration", ran.Out, StringComparison.Ordinal);
        Assert.Contains("inside", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Caution: ", ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
    }
}
