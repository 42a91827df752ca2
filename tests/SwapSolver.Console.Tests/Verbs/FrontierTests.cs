using System.Diagnostics;
using System.Globalization;
using Google.Protobuf;
using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class FrontierTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_script_reads_one_object_a_point()
    {
        var ran = (await BuiltConsole.Run("frontier", Hazelnut, "--trade", "net-carbohydrate,protein", "--points", "3", "--json")).Ends(0);
        var points = Lines(ran.Out);
        Assert.Equal(3, points.Count);
        Assert.Equal([1, 2, 3], points.Select(point => point.Point));
        Assert.All(points, point => Assert.True(point.First.Value > 0 && point.Answer.Formula.Lines.Count > 0));
    }

    [Fact]
    public async Task A_person_sees_a_table_and_a_plot()
    {
        var ran = (await BuiltConsole.Run("frontier", Hazelnut, "--trade", "net-carbohydrate,protein", "--points", "2")).Ends(0);
        Assert.StartsWith("Net carbs against protein", ran.Out, StringComparison.Ordinal);
        Assert.Contains("* a point, o the formula as it is", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Caution: ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_baker_who_presses_control_c_keeps_the_points_and_is_told_how_many()
    {
        using var console = BuiltConsole.Start(["frontier", Hazelnut, "--trade", "energy,fibre", "--points", "50", "--json"]);
        var child = await ChildProcesses.FirstOf(console);
        var first = await console.StandardOutput.ReadLineAsync().WaitAsync(BuiltConsole.Patience);
        using (var signal = Process.Start("kill", ["-INT", console.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await signal.WaitForExitAsync();
        }

        var ran = (await BuiltConsole.Run(console)).Ends(130);
        var points = Lines(first + "\n" + ran.Out);
        Assert.InRange(points.Count, 1, 49);
        Assert.Contains($"stopped: {points.Count} of at most 50 points.", ran.Error, StringComparison.Ordinal);
        Assert.Contains("Ctrl-C stops it.", ran.Error, StringComparison.Ordinal);
        await ChildProcesses.End(child);
    }

    [Theory]
    [InlineData("protein", "two readings")]
    [InlineData("protein,", "two readings")]
    [InlineData("protein,crumb", "crumb", "did you mean")]
    [InlineData("protein,salt:sideways", "sideways", "LOWER")]
    [InlineData("hydration,protein", "hydration:higher")]
    public async Task A_trade_that_cannot_be_made_is_refused(string trade, params string[] words) =>
        (await BuiltConsole.Run("frontier", Hazelnut, "--trade", trade)).Refuses(words);

    private static List<TraceFrontierResponse> Lines(string text) =>
        [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(JsonParser.Default.Parse<TraceFrontierResponse>)];
}
