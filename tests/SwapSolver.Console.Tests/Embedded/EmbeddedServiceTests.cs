using System.Diagnostics;
using System.Globalization;
using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Embedded;

public sealed class EmbeddedServiceTests
{
    private static readonly string[] Question = ["variant", BuiltConsole.Demo("almond-rolls"), "--without", "milk", "--json"];

    [Fact]
    public async Task The_service_of_a_call_is_gone_when_the_call_is_over()
    {
        var console = BuiltConsole.Start(Question);
        var child = await ChildProcesses.FirstOf(console);
        (await BuiltConsole.Run(console)).Ends(0);
        Assert.False(ChildProcesses.IsThere(child));
    }

    [Fact]
    public async Task A_console_that_is_killed_takes_its_service_along()
    {
        // Who is killed cannot tidy up: the folder of the socket stays, so it is put where the test can.
        var folder = Directory.CreateTempSubdirectory("swapsolver-tests-");
        try
        {
            using var console = BuiltConsole.Start(Question, ("TMPDIR", folder.FullName));
            var child = await ChildProcesses.FirstOf(console);
            console.Kill();
            await ChildProcesses.End(child);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_baker_who_presses_control_c_is_let_go_and_leaves_nothing_behind()
    {
        var console = BuiltConsole.Start(Question);
        var child = await ChildProcesses.FirstOf(console);
        using (var signal = Process.Start("kill", ["-INT", console.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await signal.WaitForExitAsync();
        }

        var ran = (await BuiltConsole.Run(console)).Ends(130);
        Assert.Empty(ran.Out);
        Assert.Contains("stopped before the answer came", ran.Error, StringComparison.Ordinal);
        await ChildProcesses.End(child);
    }

    [Fact]
    public async Task No_socket_and_no_folder_is_left_behind()
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-tests-");
        try
        {
            (await BuiltConsole.Run(BuiltConsole.Start(Question, ("TMPDIR", folder.FullName)))).Ends(0);
            // The runtime keeps its own diagnostic pipes there; what is ours carries our name.
            Assert.Empty(folder.EnumerateFileSystemInfos("swapsolver*", SearchOption.AllDirectories));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Two_bakers_can_ask_at_the_same_time()
    {
        var ran = await Task.WhenAll(BuiltConsole.Run(BuiltConsole.Start(Question)), BuiltConsole.Run(BuiltConsole.Start(Question)));
        Assert.Equal(ran[0].Ends(0).Read<VaryFormulaResponse>(), ran[1].Ends(0).Read<VaryFormulaResponse>());
    }

    [Fact]
    public async Task The_console_answers_from_any_folder()
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-tests-");
        try
        {
            var start = new ProcessStartInfo(BuiltConsole.Program, ["balance", BuiltConsole.Demo("almond-rolls"), "--json"])
            {
                WorkingDirectory = folder.FullName,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            (await BuiltConsole.Run(Process.Start(start)!)).Ends(0).Read<BalanceFormulaResponse>();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
