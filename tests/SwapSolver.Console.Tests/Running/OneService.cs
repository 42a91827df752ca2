using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace SwapSolver.Console.Tests.Running;

/// <summary>One service for all tests that ask a question and change nothing: starting one for each takes longer than the question.
/// How a console starts its own is tried by <c>EmbeddedServiceTests</c>, and by every test that has records.</summary>
internal static class OneService
{
    private static readonly Lazy<Task<string>> Started = new(StartAsync);

    private static readonly ConcurrentQueue<string> Log = new();

    private const int MostLines = 40;

    /// <summary>What it said last: why it failed stands there and nowhere else.</summary>
    public static string Said => string.Join(Environment.NewLine, Log);

    /// <summary>Where it listens, once it does.</summary>
    public static Task<string> AddressAsync() => Started.Value;

    private static async Task<string> StartAsync()
    {
        var (port, httpPort) = (FreePort(), FreePort());
        var program = Path.Combine(Path.GetDirectoryName(BuiltConsole.Program)!, "service", "SwapSolver.Service");
        var start = new ProcessStartInfo(program, ["--grpc-port", $"{port}", "--http-port", $"{httpPort}", "--records", Path.Combine(AppContext.BaseDirectory, "no-records")]);
        // Tests ask quicker than a caller may.
        start.Environment["Limits__CallerCallsPerSecond"] = "10000";
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        var process = new Process { StartInfo = start };
        process.OutputDataReceived += (_, line) => Note(line.Data);
        process.ErrorDataReceived += (_, line) => Note(line.Data);
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => process.Kill();
        using var http = new HttpClient();
        for (var began = Stopwatch.StartNew(); began.Elapsed < BuiltConsole.Patience && !process.HasExited; await Task.Delay(50))
        {
            try
            {
                if ((await http.GetAsync(new Uri($"http://127.0.0.1:{httpPort}/health/ready"))).IsSuccessStatusCode)
                {
                    return $"http://127.0.0.1:{port}";
                }
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }
        }

        throw new InvalidOperationException($"the service that the tests share did not start: {Said}");
    }

    private static void Note(string? line)
    {
        Log.Enqueue(line ?? string.Empty);
        if (Log.Count > MostLines)
        {
            Log.TryDequeue(out _);
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
