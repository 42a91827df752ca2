using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class ReformulateTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_word_and_a_figure_stand_side_by_side()
    {
        var response = (await BuiltConsole.Run("reformulate", Hazelnut, "--target", "less-salt", "--target", "protein=4..", "--json")).Ends(0).Read<ReformulateFormulaResponse>();
        Assert.NotEmpty(response.Answers);
        Assert.Equal(["protein", "salt"], response.Before.Select(reading => reading.Balance).Order());
    }

    [Fact]
    public async Task A_person_sees_what_was_to_move_before_and_after()
    {
        var ran = (await BuiltConsole.Run("reformulate", Hazelnut, "--target", "moister")).Ends(0);
        Assert.StartsWith("What was to move", ran.Out, StringComparison.Ordinal);
        Assert.Contains("before", ran.Out, StringComparison.Ordinal);
        Assert.Contains("'moister' is taken as hydration", ran.Out, StringComparison.Ordinal);
        Assert.Empty(ran.Faults);
    }

    [Fact]
    public async Task A_target_out_of_reach_is_a_no() =>
        Assert.NotEmpty((await BuiltConsole.Run("reformulate", Hazelnut, "--target", "energy=..20", "--json")).Ends(1).Read<ReformulateFormulaResponse>().Conflict);

    [Theory]
    [InlineData("sofder", "softer")]
    [InlineData("protein", "at least one")]
    [InlineData("protein=5", "BALANCE=LOW..HIGH", "protein=5")]
    [InlineData("protein=a..", "'a'")]
    [InlineData("price=..2", "pantry measure", "--price")]
    public async Task A_target_that_cannot_be_aimed_at_is_refused(string target, params string[] words) =>
        (await BuiltConsole.Run("reformulate", Hazelnut, "--target", target)).Refuses(words);

    [Fact]
    public async Task No_target_at_all_is_refused() => (await BuiltConsole.Run("reformulate", Hazelnut)).Refuses("--target", "Example:");
}
