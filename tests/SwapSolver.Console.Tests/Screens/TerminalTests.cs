using System.Diagnostics;
using SwapSolver.Console.Tests.Running;

namespace SwapSolver.Console.Tests.Screens;

public sealed class TerminalTests
{
    private const char Escape = '\u001b';

    /// <summary>Opens a colour or weight (ECMA-48, SGR). The runtime's own keypad switch, which paints nothing, is not one.</summary>
    private const string Paint = @"\u001b\[[0-9;]*m";

    private static readonly string Question = $"'{BuiltConsole.Program}' balance '{BuiltConsole.Demo("hazelnut-tin-loaf")}'";

    [Fact]
    public async Task What_is_no_terminal_gets_no_colour() =>
        Assert.DoesNotContain(Escape, (await BuiltConsole.Run("balance", BuiltConsole.Demo("hazelnut-tin-loaf"))).Ends(0).Out);

    [Fact]
    public async Task A_terminal_gets_colour_and_the_same_words()
    {
        var coloured = await OnTerminal(Question, ("TERM", "xterm-256color"), ("NO_COLOR", ""));
        Assert.Matches(Paint, coloured);
        Assert.Contains("inside", coloured, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_baker_who_wants_no_colour_gets_none_on_a_terminal_either()
    {
        Assert.DoesNotMatch(Paint, await OnTerminal(Question, ("TERM", "xterm-256color"), ("NO_COLOR", "1")));
        Assert.DoesNotMatch(Paint, await OnTerminal($"{Question} --no-color", ("TERM", "xterm-256color"), ("NO_COLOR", "")));
        Assert.DoesNotMatch(Paint, await OnTerminal(Question, ("TERM", "dumb"), ("NO_COLOR", "")));
    }

    /// <summary>Runs a command line on a terminal of the system's own (script, of util-linux) and gives what it shows.</summary>
    private static async Task<string> OnTerminal(string command, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("script", ["-qec", command, "/dev/null"]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var shown = process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync().WaitAsync(BuiltConsole.Patience);
        Assert.Equal(0, process.ExitCode);
        return await shown;
    }
}
