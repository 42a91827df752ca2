using System.Net.Sockets;
using System.Text;

namespace SwapSolver.Benchmarks.Load;

/// <summary>A thousand connections that say nothing, half a request, or open a stream and never end it; others ask beside them.</summary>
internal static class Stalled
{
    private const int Asked = 60, Turns = 3;

    /// <summary>Runs it.</summary>
    /// <param name="connections">How many stand idle.</param>
    public static async Task<int> Run(int connections)
    {
        await using var service = await ServiceProcess.Start(("Limits:SilenceSeconds", "600"));
        using var channel = service.Open();
        var caller = new Caller(channel.CreateCallInvoker());
        var number = 0;
        for (var warm = 0; warm < 4 * Asked; warm++)
        {
            await caller.Ask(++number);
        }

        // Without and with them in turn, so that what else the machine does falls on both.
        var (without, with) = (new List<TimeSpan>(), new List<TimeSpan>());
        var stood = 0;
        for (var turn = 0; turn < Turns; turn++)
        {
            await Ask(without);
            var idle = new List<IDisposable>();
            try
            {
                for (var one = 0; one < connections; one++)
                {
                    idle.Add(await Idle(service, one));
                }

                await Task.Delay(1_000);
                stood = Math.Max(stood, service.Handles);
                await Ask(with);
            }
            finally
            {
                idle.ForEach(one => one.Dispose());
            }

            await Task.Delay(1_000);
        }

        var left = service.Handles;
        return LoadPage.Write("Connections that say nothing", [
            Found.Told("connections", $"{connections}"),
            Found.AtLeast("handles of the service meanwhile", stood, connections),
            Found.AtMost("p50 of others against without them", with.At(0.5) / without.At(0.5), 1.1),
            Found.AtMost("handles of the service afterwards", left, stood - (0.9 * connections)),
        ]);

        async Task Ask(List<TimeSpan> times)
        {
            for (var call = 0; call < Asked; call++)
            {
                times.Add((await caller.Ask(++number)).Took);
            }
        }
    }

    private static async Task<IDisposable> Idle(ServiceProcess service, int number)
    {
        var address = number % 2 == 0 ? service.HttpAddress : service.GrpcAddress;
        var socket = new TcpClient();
        await socket.ConnectAsync(address.Host, address.Port);
        var stream = socket.GetStream();
        switch (number % 4)
        {
            case 0:
                await stream.WriteAsync(Encoding.ASCII.GetBytes("POST /v1/formulas:balance HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 400\r\n\r\n{ \"formula\": "));
                break;
            case 1:
                // The greeting of HTTP/2 (RFC 9113, 3.4) with empty settings, and the head of a call whose message never comes.
                await stream.WriteAsync((byte[])[.. "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"u8, 0, 0, 0, 4, 0, 0, 0, 0, 0, .. HalfOpen()]);
                break;
            case 2:
                await stream.WriteAsync(Encoding.ASCII.GetBytes("GET /v1/ingre"));
                break;
            default:
                break;
        }

        return socket;
    }

    /// <summary>A HEADERS frame (RFC 9113, 6.2) on stream 1 that does not end it, its fields as literals without indexing (RFC 7541, 6.2.2).</summary>
    private static byte[] HalfOpen()
    {
        var block = new List<byte>();
        foreach (var (name, value) in new[]
        {
            (":method", "POST"), (":scheme", "http"), (":path", "/swapsolver.v1.BalanceService/BalanceFormula"), (":authority", "localhost"),
            ("content-type", "application/grpc"), ("te", "trailers"),
        })
        {
            block.AddRange([0, (byte)name.Length, .. Encoding.ASCII.GetBytes(name), (byte)value.Length, .. Encoding.ASCII.GetBytes(value)]);
        }

        const byte headers = 1, endHeaders = 4;
        return [(byte)(block.Count >> 16), (byte)(block.Count >> 8), (byte)block.Count, headers, endHeaders, 0, 0, 0, 1, .. block];
    }
}
