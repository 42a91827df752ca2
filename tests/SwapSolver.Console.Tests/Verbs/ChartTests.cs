using Google.Protobuf;
using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class ChartTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_script_reads_one_object_a_pair()
    {
        var ran = (await BuiltConsole.Run("chart", Hazelnut, "--ingredient", "butter", "--json")).Ends(0);
        var pairs = ran.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(JsonParser.Default.Parse<ChartSwapsResponse>).ToList();
        Assert.Equal(pairs[0].Pairs, pairs.Count);
        Assert.All(pairs, pair => Assert.Equal("ingredients/butter", pair.Ingredient));
        Assert.Contains("\"verdict\": \"BALANCES\"", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_sees_what_will_do_and_what_will_not()
    {
        var ran = (await BuiltConsole.Run("chart", Hazelnut, "--ingredient", "butter", "--ingredient", "salt")).Ends(0);
        Assert.Contains("In place of unsalted butter", ran.Out, StringComparison.Ordinal);
        Assert.Contains("In place of salt", ran.Out, StringComparison.Ordinal);
        Assert.Contains("check the label of every packet", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_in_the_formula_is_refused_with_what_is() =>
        (await BuiltConsole.Run("chart", Hazelnut, "--ingredient", "honey")).Refuses("honey", "hazelnut-flour");
}
