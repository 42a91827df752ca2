using System.Net.Sockets;
using System.Text;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Networking;

/// <summary>Who says nothing, or half a word, does not keep a door open.</summary>
public sealed class DoorsTests
{
    // Far above the second that is allowed below, far below any time that a forgotten connection would stay.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(40);

    [Theory]
    [InlineData("")]
    [InlineData("GET /v1/ingre")]
    [InlineData("GET /health/live HTTP/1.1\r\nHost: localhost\r\n\r\n")]
    public async Task A_caller_who_falls_silent_is_hung_up_on(string said)
    {
        await using var service = await RunningService.Start(null, null, ("Limits:SilenceSeconds", "1"));
        using var caller = new TcpClient();
        await caller.ConnectAsync(service.Http.BaseAddress!.Host, service.Http.BaseAddress.Port);
        var stream = caller.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(said));
        Assert.True(await IsHungUp(stream), "the connection stays");
    }

    [Fact]
    public async Task No_more_connections_stand_than_may()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:Connections", "3"));
        var callers = new List<TcpClient>();
        try
        {
            for (var one = 0; one < 3; one++)
            {
                callers.Add(new TcpClient());
                await callers[one].ConnectAsync(service.Http.BaseAddress!.Host, service.Http.BaseAddress.Port);
                await callers[one].GetStream().WriteAsync("GET /health/live HTTP/1.1\r\nHost: localhost\r\n\r\n"u8.ToArray());
                Assert.True(await callers[one].GetStream().ReadAsync(new byte[16]) > 0);
            }

            using var fourth = new TcpClient();
            await fourth.ConnectAsync(service.Http.BaseAddress!.Host, service.Http.BaseAddress.Port);
            Assert.True(await IsHungUp(fourth.GetStream()), "a fourth was let in");
        }
        finally
        {
            callers.ForEach(caller => caller.Dispose());
        }
    }

    private static async Task<bool> IsHungUp(NetworkStream stream)
    {
        using var patience = new CancellationTokenSource(Patience);
        try
        {
            while (await stream.ReadAsync(new byte[1_024], patience.Token) > 0)
            {
                // The answer, or why it hangs up.
            }

            return true;
        }
        catch (IOException)
        {
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
