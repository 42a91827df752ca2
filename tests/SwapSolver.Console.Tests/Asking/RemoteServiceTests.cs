using System.Net;
using System.Net.Sockets;
using SwapSolver.Console.Tests.Running;

namespace SwapSolver.Console.Tests.Asking;

public sealed class RemoteServiceTests
{
    [Fact]
    public async Task A_door_that_is_closed_is_no_fault_of_the_baker()
    {
        // A port that was free a moment ago: nothing listens there.
        int port;
        using (var listener = new TcpListener(IPAddress.Loopback, 0))
        {
            listener.Start();
            port = ((IPEndPoint)listener.LocalEndpoint).Port;
        }

        var ran = await BuiltConsole.Run("balance", BuiltConsole.Demo("almond-rolls"), "--json", "--server", $"http://127.0.0.1:{port}");
        ran.Ends(3).SaysOnlyOnError($"127.0.0.1:{port}", "--server");
    }

    [Fact]
    public async Task A_door_behind_which_nobody_speaks_our_language_is_named_too()
    {
        using var stranger = new TcpListener(IPAddress.Loopback, 0);
        stranger.Start();
        var port = ((IPEndPoint)stranger.LocalEndpoint).Port;
        using var evening = new CancellationTokenSource();
        var greeting = Greet(stranger, evening.Token);
        var ran = await BuiltConsole.Run("balance", BuiltConsole.Demo("almond-rolls"), "--server", $"http://127.0.0.1:{port}");
        await evening.CancelAsync();
        await greeting;
        ran.Ends(3).SaysOnlyOnError($"127.0.0.1:{port}");
    }

    [Fact]
    public async Task Too_little_time_is_said_with_the_way_to_give_more() =>
        (await BuiltConsole.Run("variant", BuiltConsole.Demo("hazelnut-tin-loaf"), "--without", "egg", "--deadline", "0.001", "--json"))
            .Ends(3).SaysOnlyOnError("0.001", "--deadline");

    /// <summary>Greets every caller in a language that is not ours.</summary>
    private static async Task Greet(TcpListener stranger, CancellationToken evening)
    {
        try
        {
            while (true)
            {
                using var caller = await stranger.AcceptTcpClientAsync(evening);
                await caller.GetStream().WriteAsync("220 good morning\r\n"u8.ToArray(), evening);
            }
        }
        catch (OperationCanceledException)
        {
            // The shop is closed.
        }
    }
}
