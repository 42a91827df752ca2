using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class ResizeTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_tin_of_twice_the_length_takes_twice_the_batter()
    {
        var response = (await BuiltConsole.Run("resize", Hazelnut, "--tin", "430x110x65", "--json")).Ends(0).Read<ResizeFormulaResponse>();
        Assert.Equal(2, response.Factor, 9);
        Assert.Equal(8, response.Answers[0].Formula.Lines.Single(line => line.Ingredient == "ingredients/egg-whole").Count);
    }

    [Fact]
    public async Task A_cap_out_of_reach_is_a_no()
    {
        var ran = await BuiltConsole.Run("resize", Hazelnut, "--factor", "1.5", "--max-net-carbs", "0.01", "--json");
        Assert.Empty(ran.Ends(1).Read<ResizeFormulaResponse>().Answers);
    }

    [Fact]
    public async Task Two_sizes_at_once_are_refused() =>
        (await BuiltConsole.Run("resize", Hazelnut, "--factor", "2", "--mass", "900")).Refuses("--mass", "--factor", "one of");

    [Fact]
    public async Task No_size_at_all_is_refused() =>
        (await BuiltConsole.Run("resize", Hazelnut)).Refuses("--mass", "--factor", "--tin", "--slices");

    [Theory]
    [InlineData("--factor", "-2", "-2")]
    [InlineData("--factor", "NaN", "NaN")]
    [InlineData("--mass", "-500", "-500")]
    [InlineData("--mass", "1e9", "1000000000")]
    [InlineData("--tin", "200x100", "200x100")]
    [InlineData("--tin", "0x100x60", "0")]
    [InlineData("--slices", "0", "'0'")]
    [InlineData("--slices", "2.5", "2.5")]
    public async Task A_size_that_no_kitchen_bakes_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("resize", Hazelnut, option, value)).Refuses(shown);

    [Fact]
    public async Task A_line_in_cups_is_told()
    {
        using var loaf = FormulaFile.Of(""" "text": "1 metric cup water" """);
        var ran = await BuiltConsole.Run("resize", loaf.Location, "--factor", "2", "--system", "metric");
        // 250 mL, 3 % either way.
        Assert.Matches(@"1 metric cup water\s+water\s+250\s+242\.5 to 257\.5", ran.Out);
    }
}
