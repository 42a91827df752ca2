using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace SwapSolver.Service.Tests.Cluster;

/// <summary>The service as it is shipped, as a process of its own, so that it can be killed.</summary>
internal sealed class ServiceProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly string records;

    private readonly (string Name, string Value)[] settings;

    private readonly int httpPort = FreePort();

    private readonly Process process;

    private ServiceProcess(string records, int grpcPort, int? processor, (string Name, string Value)[] settings)
    {
        (this.records, this.settings, GrpcPort) = (records, settings, grpcPort);
        string[] words = ["dotnet", Path.Combine(AppContext.BaseDirectory, "SwapSolver.Service.dll"), "--grpc-port", $"{GrpcPort}", "--http-port", $"{httpPort}", "--records", records];
        // One processor of its own, where that is asked for: as a small machine.
        string[] all = processor is { } number ? ["taskset", "--cpu-list", $"{number}", .. words] : words;
        var start = new ProcessStartInfo(all[0], all[1..]) { RedirectStandardError = true };
        foreach (var (name, value) in settings)
        {
            start.Environment[name.Replace(":", "__", StringComparison.Ordinal)] = value;
        }

        process = Process.Start(start)!;
        process.ErrorDataReceived += (_, line) => Said = line.Data is { Length: > 0 } text ? $"{Said}{text}\n" : Said;
        process.BeginErrorReadLine();
    }

    /// <summary>Where it speaks gRPC.</summary>
    public int GrpcPort { get; }

    /// <summary>What it said on standard error.</summary>
    public string Said { get; private set; } = string.Empty;

    /// <summary>Memory that it holds [MB].</summary>
    public double ResidentMegabytes => double.Parse(
        File.ReadLines($"/proc/{process.Id}/status").First(line => line.StartsWith("VmRSS:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;

    /// <summary>Starts it and waits until it is ready.</summary>
    public static async Task<ServiceProcess> Start(string records, int? processor = null, params (string Name, string Value)[] settings)
    {
        var service = new ServiceProcess(records, FreePort(), processor, settings);
        await service.Ready();
        return service;
    }

    /// <summary>Starts it again at the same address; it was killed or stopped before.</summary>
    public async Task<ServiceProcess> Again()
    {
        var service = new ServiceProcess(records, GrpcPort, null, settings);
        await service.Ready();
        return service;
    }

    /// <summary>Ends it as a loss of power does.</summary>
    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    /// <summary>Tells it to stop, as a rolling restart does; done when it has.</summary>
    public async Task Stop()
    {
        using var tell = Process.Start("kill", ["-TERM", $"{process.Id}"]);
        await process.WaitForExitAsync().WaitAsync(Patience);
    }

    /// <summary>A metric that it shows.</summary>
    /// <param name="isMeant">Which lines are added up.</param>
    public async Task<double> Metric(Func<string, bool> isMeant)
    {
        using var http = new HttpClient();
        var page = await http.GetStringAsync(new Uri($"http://127.0.0.1:{httpPort}/metrics"));
        return page.Split('\n').Where(line => !line.StartsWith('#') && isMeant(line)).Sum(line => double.Parse(line.Split(' ')[1], CultureInfo.InvariantCulture));
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            await Stop();
        }

        process.Dispose();
    }

    private async Task Ready()
    {
        using var http = new HttpClient();
        for (var began = Stopwatch.StartNew(); began.Elapsed < Patience && !process.HasExited; await Task.Delay(100))
        {
            try
            {
                if ((await http.GetAsync(new Uri($"http://127.0.0.1:{httpPort}/health/ready"))).IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }
        }

        throw new InvalidOperationException($"the service is not ready: {Said}");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
