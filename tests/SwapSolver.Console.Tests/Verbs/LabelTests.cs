using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class LabelTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_baker_reads_printed_and_unrounded_figures_side_by_side()
    {
        var ran = (await BuiltConsole.Run("label", Hazelnut, "--law", "us")).Ends(0);

        Assert.Matches(@"Total fat +13 g +16 % +12\.72", ran.Out);
        Assert.Matches(@"Trans fat +not known", ran.Out);
        Assert.Contains("No gluten-containing ingredient is used. That is no claim", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
    }

    [Fact]
    public async Task A_script_reads_the_lines_of_the_law_it_asked_for()
    {
        var response = (await BuiltConsole.Run("label", Hazelnut, "--law", "au-nz", "--serving", "2", "--json")).Ends(0).Read<PrintCardResponse>();

        Assert.Equal(Label.Types.Law.AuNz, response.LabelLaw.Law);
        Assert.Equal(2, response.LabelLaw.ServingSlices);
        Assert.Equal(2 * response.Label[1].PerSlice, response.Label[1].Amount, 1e-9);
    }

    [Theory]
    [InlineData("--law", "mars", "mars")]
    [InlineData("--serving", "99", "99")]
    [InlineData("--energy", "bomb", "own-figures")]
    public async Task What_no_label_can_say_is_refused(string option, string value, string shown) =>
        (await BuiltConsole.Run("label", Hazelnut, option, value)).Refuses(shown);
}
