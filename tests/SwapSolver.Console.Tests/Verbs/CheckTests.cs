using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class CheckTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_swap_that_balances_is_a_yes()
    {
        var response = (await BuiltConsole.Run("check", Hazelnut, "--swap", "butter=butter", "--json")).Ends(0).Read<CheckSwapResponse>();
        Assert.Equal(CheckSwapResponse.Types.Verdict.Balances, response.Verdict);
    }

    [Fact]
    public async Task A_dose_that_leaves_acid_over_is_a_no_with_the_dose_that_would_do()
    {
        var response = (await BuiltConsole.Run("check", Hazelnut, "--swap", "baking-soda=potassium-bicarbonate:6", "--json")).Ends(1).Read<CheckSwapResponse>();
        Assert.Equal(CheckSwapResponse.Types.Verdict.DoesNotBalance, response.Verdict);
        // 6 g of soda are 6 / 84.007 mol; as much base of KHCO3 weighs 6 x 100.115 / 84.007 = 7.15 g (molar masses).
        var dose = response.Repair.Formula.Lines.Single(line => line.Ingredient == "ingredients/potassium-bicarbonate").Grams;
        Assert.InRange(dose, 6.5, 7.8);
    }

    [Fact]
    public async Task The_first_word_is_the_verdict()
    {
        var ran = (await BuiltConsole.Run("check", Hazelnut, "--swap", "cream-of-tartar=nothing")).Ends(1);
        Assert.StartsWith("No.", ran.Out, StringComparison.Ordinal);
        Assert.Contains("soda is left over", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("butter", "is not a swap", "X=Y")]
    [InlineData("butter=olive-oil:-5", "-5", "")]
    [InlineData("butter=olive-oil:NaN", "NaN", "")]
    [InlineData("butter=olive-oil:1,5", "1,5", "")]
    [InlineData("butter=nothing:5", "left out", "X=Y")]
    [InlineData("butter:x=olive-oil", "'x'", "12.5")]
    [InlineData(":5=olive-oil", "is not a swap", "X=Y")]
    [InlineData("butter:500=olive-oil", "from_grams", "30 g")]
    public async Task What_is_no_swap_is_refused(string swap, string value, string wayOut) =>
        (await BuiltConsole.Run("check", Hazelnut, "--swap", swap)).Refuses(value, wayOut);

    [Fact]
    public async Task Half_of_a_flour_goes_and_half_stays()
    {
        var response = (await BuiltConsole.Run("check", Hazelnut, "--swap", "hazelnut-flour:90=almond-flour-blanched:80", "--json")).Ends(0).Read<CheckSwapResponse>();
        double Grams(string id) => response.Swapped.Lines.Single(line => line.Ingredient == $"ingredients/{id}").Grams;
        Assert.Equal((90, 80), (Grams("hazelnut-flour"), Grams("almond-flour-blanched")));
    }

    [Fact]
    public async Task Nothing_can_be_swapped_that_is_not_in_the_bowl() =>
        (await BuiltConsole.Run("check", Hazelnut, "--swap", "almond-meal=butter")).Refuses("swaps[0].from", "almond-meal", "hazelnut-flour");

    [Fact]
    public async Task A_line_in_cups_is_told()
    {
        using var loaf = FormulaFile.Of(""" "text": "1 metric cup water" """);
        var ran = await BuiltConsole.Run("check", loaf.Location, "--swap", "almond-meal=hazelnut-flour", "--system", "metric");
        // 250 mL, 3 % either way.
        Assert.Matches(@"1 metric cup water\s+water\s+250\s+242\.5 to 257\.5", ran.Out);
    }
}
