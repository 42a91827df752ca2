using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class BakeTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    private static readonly string Seeded = BuiltConsole.Demo("seeded-free-form-loaf");

    [Fact]
    public async Task A_script_reads_the_window_the_curve_and_the_cooling()
    {
        var response = (await BuiltConsole.Run("bake", Hazelnut, "--json")).Ends(0).Read<BakeFormulaResponse>();

        Assert.True(response.TimeToCoreMinutes.Low < response.TimeToCoreMinutes.High);
        Assert.True(response.CoolToSliceMinutes.Value > response.TimeToCoreMinutes.Value);
        Assert.True(response.Curve.Count > 30);
        Assert.InRange(response.CoreTargetCelsius, 93, 98);
    }

    [Fact]
    public async Task The_first_words_are_the_minutes_and_a_curve_follows()
    {
        var ran = (await BuiltConsole.Run("bake", Hazelnut)).Ends(0);

        Assert.Matches(@"^\d+ \(\d+ to \d+\) minutes to a core of 96", ran.Out);
        Assert.Contains("Probe the core from minute", ran.Out, StringComparison.Ordinal);
        Assert.Contains("It loses about", ran.Out, StringComparison.Ordinal);
        Assert.Matches(@"oven at 190 °C +0\.\d\d \(0", ran.Out);
        Assert.Contains("####", ran.Out, StringComparison.Ordinal);
        Assert.Contains("----", ran.Out, StringComparison.Ordinal);
        Assert.Contains("at least 71", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
    }

    [Fact]
    public async Task A_known_bake_of_this_kitchen_is_kept()
    {
        var response = (await BuiltConsole.Run("bake", Seeded, "--core", "95", "--anchor", $"{Seeded}:66:95", "--json")).Ends(0).Read<BakeFormulaResponse>();
        Assert.Equal(66, response.TimeToCoreMinutes.Value, 1e-6);

        var stored = (await BuiltConsole.Run("bake", Seeded, "--core", "95", "--anchor", "formulas/seeded-free-form-loaf:66:95", "--json")).Ends(0).Read<BakeFormulaResponse>();
        Assert.Equal(response.TimeToCoreMinutes, stored.TimeToCoreMinutes);
    }

    [Fact]
    public async Task High_up_the_target_follows_the_boiling_point()
    {
        var response = (await BuiltConsole.Run("bake", Hazelnut, "--altitude", "2000", "--core", "98", "--json")).Ends(0).Read<BakeFormulaResponse>();
        Assert.InRange(response.BoilingPointCelsius - response.CoreTargetCelsius, 1.9, 6.1);
    }

    [Fact]
    public async Task An_oven_that_never_bakes_it_is_a_no()
    {
        using var loaf = FormulaFile.Of(""" "ingredient": "ingredients/water", "grams": 200 """, """, "oven": { "celsius": 60, "fan": false }""");
        var ran = (await BuiltConsole.Run("bake", loaf.Location)).Ends(1);
        Assert.Contains("does not come to", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--anchor", "loaf.json", "loaf.json")]
    [InlineData("--anchor", "loaf.json:sixty:96", "sixty")]
    [InlineData("--anchor", "no-such-loaf.json:60:96", "no-such-loaf.json")]
    [InlineData("--core", "hot", "hot")]
    [InlineData("--core", "300", "300")]
    [InlineData("--altitude", "9000", "9000")]
    public async Task What_no_kitchen_bakes_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("bake", Hazelnut, option, value)).Refuses(shown);

    [Fact]
    public async Task A_larger_loaf_is_printed_with_its_new_time()
    {
        var ran = (await BuiltConsole.Run("resize", Seeded, "--factor", "2", "--baked", "60", "--core", "96", "--answers", "1")).Ends(0);
        Assert.Contains("In the oven", ran.Out, StringComparison.Ordinal);
        Assert.Matches(@"1\.[34]\d times the minutes", ran.Out);
        Assert.Contains("in place of 60", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--baked", "0", "0")]
    [InlineData("--baked", "long", "long")]
    [InlineData("--core", "7", "7")]
    public async Task A_known_time_that_cannot_be_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("resize", Seeded, "--factor", "2", option, value)).Refuses(shown);
}
