using SwapSolver.Console.Tests.Running;

namespace SwapSolver.Console.Tests.Arguments;

public sealed class UsageErrorsTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task An_option_that_does_not_exist_is_named_with_the_nearest() =>
        (await BuiltConsole.Run("variant", Hazelnut, "--witout", "egg")).Refuses("--witout", "--without", "Example:");

    [Fact]
    public async Task A_verb_that_does_not_exist_is_named_with_the_nearest() =>
        (await BuiltConsole.Run("varient", Hazelnut)).Refuses("varient", "variant");

    [Fact]
    public async Task No_verb_at_all_is_refused_with_the_list_of_verbs() =>
        (await BuiltConsole.Run()).Refuses("balance", "variant", "check", "resize", "pantry");

    [Fact]
    public async Task A_verb_without_its_formula_is_refused() => (await BuiltConsole.Run("balance")).Refuses("Example:");

    [Theory]
    [InlineData("--deadline", "0")]
    [InlineData("--deadline", "soon")]
    [InlineData("--server", "nowhere")]
    public async Task A_value_that_an_option_cannot_have_is_named(string option, string value) =>
        (await BuiltConsole.Run("balance", Hazelnut, option, value)).Refuses(option, value);

    [Theory]
    [InlineData("--new-ingredients", "many", "many")]
    [InlineData("--answers", "9", "9")]
    [InlineData("--scale-step", "0", "'0'")]
    [InlineData("--limit", "hydratoin=1..2", "hydration")]
    [InlineData("--limit", "hydration=2..1", "2")]
    [InlineData("--egg-size", "HUGE", "LARGE_EU")]
    public async Task A_habit_that_no_kitchen_has_is_refused(string option, string value, string words) =>
        (await BuiltConsole.Run("variant", Hazelnut, "--without", "egg", option, value)).Refuses(words);

    [Fact]
    public async Task Every_verb_has_help_with_an_example()
    {
        foreach (var verb in new[] { "balance", "variant", "check", "resize", "reformulate", "frontier", "chart" })
        {
            var ran = (await BuiltConsole.Run(verb, "--help")).Ends(0);
            Assert.Contains($"swapsolver {verb}", ran.Out, StringComparison.Ordinal);
            Assert.Empty(ran.Faults);
        }
    }
}
