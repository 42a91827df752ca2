using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class RiseTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_script_reads_the_pH_the_curve_and_the_window()
    {
        var response = (await BuiltConsole.Run("rise", Hazelnut, "--json")).Ends(0).Read<PredictRiseResponse>();

        Assert.InRange(response.PhCrumb.Value, 6, 8);
        Assert.True(response.Gas.Count > 10);
        Assert.InRange(response.WorkingWindowMinutes, 1, 60);
    }

    [Fact]
    public async Task The_first_words_say_when_it_must_be_in_the_oven_and_a_curve_follows()
    {
        var ran = (await BuiltConsole.Run("rise", Hazelnut)).Ends(0);

        Assert.StartsWith("Into the oven within about", ran.Out, StringComparison.Ordinal);
        Assert.Contains("###", ran.Out, StringComparison.Ordinal);
        Assert.Contains("says nothing about food safety", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task High_up_the_cut_is_printed()
    {
        var ran = (await BuiltConsole.Run("rise", Hazelnut, "--altitude", "2000", "--wait", "20")).Ends(0);

        Assert.Contains("Less soda and powder at this height", ran.Out, StringComparison.Ordinal);
        Assert.Contains("water boils at 93", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--altitude", "9000", "9000")]
    [InlineData("--altitude", "high", "high")]
    [InlineData("--wait", "-1", "-1")]
    public async Task A_height_or_wait_that_cannot_be_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("rise", Hazelnut, option, value)).Refuses(shown);
}
