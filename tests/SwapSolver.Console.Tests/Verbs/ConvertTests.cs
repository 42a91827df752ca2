using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class ConvertTests
{
    [Fact]
    public async Task A_baker_reads_grams_range_and_what_was_assumed()
    {
        var ran = (await BuiltConsole.Run("convert", "--text", "1 cup coconut flour")).Ends(0);
        Assert.Empty(ran.Faults);
        Assert.Matches(@"coconut-flour\s+112\s+95\.2 to 128\.8", ran.Out);
        Assert.Contains("US customary cup", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_is_not_sure_is_a_no_with_candidates()
    {
        var ran = (await BuiltConsole.Run("convert", "--text", "1 cup almnd flour")).Ends(1);
        Assert.Contains("almond-flour-blanched", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_and_standard_input_are_read_line_by_line()
    {
        const string Text = "# invented\n2 large eggs\n\n5 g salt\n";
        using var file = new FormulaFile(Text);
        var read = (await BuiltConsole.Run("convert", file.Location, "--json")).Ends(0).Read<ConvertLinesResponse>();
        Assert.Equal([100, 5], read.Lines.Select(line => line.Grams));
        var piped = (await BuiltConsole.RunWithInput(Text, "convert", "-", "--json")).Ends(0).Read<ConvertLinesResponse>();
        Assert.Equal(read, piped);
    }

    [Fact]
    public async Task A_system_is_typed_in_either_case() =>
        // 20 mL of water.
        Assert.Equal(20, (await BuiltConsole.Run("convert", "--text", "1 tbsp water", "--system", "australian", "--json")).Ends(0).Read<ConvertLinesResponse>().Lines[0].Grams);

    [Fact]
    public async Task Wrong_usage_is_said()
    {
        (await BuiltConsole.Run("convert")).Refuses("FILE", "--text");
        (await BuiltConsole.Run("convert", "-", "--text", "1 egg")).Refuses("FILE", "--text");
        (await BuiltConsole.Run("convert", "--text", "1 egg", "--system", "roman")).Refuses("roman", "METRIC");
        (await BuiltConsole.Run("convert", "--text", " ")).Refuses("no line");
        (await BuiltConsole.Run("convert", "no-such-file.txt")).Refuses("no-such-file.txt");
    }
}
