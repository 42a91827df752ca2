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
    public async Task A_loaf_in_cups_is_read_in_grams_with_range_and_what_was_assumed()
    {
        using var loaf = FormulaFile.Of(""" "text": "1 cup coconut flour" """);
        var ran = (await BuiltConsole.Run("balance", loaf.Location)).Ends(0);
        Assert.Matches(@"1 cup coconut flour\s+coconut-flour\s+112\s+95\.2 to 128\.8", ran.Out);
        Assert.Contains("US customary cup", ran.Out, StringComparison.Ordinal);
        Assert.Contains("spoons and cups", ran.Out, StringComparison.Ordinal);
        var weighed = (await BuiltConsole.Run("balance", BuiltConsole.Demo("hazelnut-tin-loaf"))).Ends(0);
        Assert.DoesNotContain("read as", weighed.Out, StringComparison.Ordinal);
    }

    [Theory]
    // 20 mL of water by the litre of 1000 g; what the command line says goes before what the file says.
    [InlineData("", "--system=australian")]
    [InlineData(""", "system": "AUSTRALIAN" """, "--json")]
    [InlineData(""", "system": "METRIC" """, "--system=AUSTRALIAN")]
    public async Task The_system_stands_in_the_file_or_on_the_command_line(string system, string option)
    {
        using var loaf = FormulaFile.Of(""" "text": "1 tbsp water" """, system);
        var response = (await BuiltConsole.Run("balance", loaf.Location, "--json", option)).Ends(0).Read<BalanceFormulaResponse>();
        Assert.Equal(20, Assert.Single(response.LinesRead).Grams);
    }

    [Fact]
    public async Task A_system_that_cannot_be_meant_is_refused()
    {
        using var loaf = FormulaFile.Of(""" "text": "1 tbsp water" """, """, "system": "ROMAN" """);
        (await BuiltConsole.Run("balance", loaf.Location)).Refuses("system", "ROMAN", "AUSTRALIAN");
        (await BuiltConsole.Run("balance", BuiltConsole.Demo("cocoa-cake"), "--system", "roman")).Refuses("--system", "roman", "AUSTRALIAN");
        (await BuiltConsole.Run("balance", "formulas/cocoa-cake", "--system", "metric")).Refuses("--system", "formulas/cocoa-cake", "Leave it away");
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
        Assert.Empty(ran.Faults);
        // 260 g of water on 240 g of flours (180 + 60) are 108.3 %.
        Assert.Matches(@"water\s+260\s+108", ran.Out);
        Assert.Contains("hydration", ran.Out, StringComparison.Ordinal);
        Assert.Contains("inside", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Caution: ", ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
    }
}
