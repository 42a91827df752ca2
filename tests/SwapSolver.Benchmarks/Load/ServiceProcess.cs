using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Grpc.Core;
using Grpc.Net.Client;
using SwapSolver.Records;
using SwapSolver.Service.Access;

namespace SwapSolver.Benchmarks.Load;

/// <summary>The service as a process of its own on free loopback ports, so that its memory, handles and end can be looked at.</summary>
internal sealed class ServiceProcess : IAsyncDisposable
{
    private static readonly TimeSpan StartTime = TimeSpan.FromSeconds(60);

    private static readonly TimeSpan StopTime = TimeSpan.FromSeconds(20);

    private readonly Process process;

    private readonly DirectoryInfo records;

    private ServiceProcess(Process process, DirectoryInfo records, int grpcPort, int httpPort, string key)
    {
        this.process = process;
        this.records = records;
        (GrpcAddress, HttpAddress) = (Local(grpcPort), Local(httpPort));
        Key = key;
    }

    /// <summary>Where it speaks gRPC.</summary>
    public Uri GrpcAddress { get; }

    /// <summary>Where it speaks HTTP/JSON.</summary>
    public Uri HttpAddress { get; }

    /// <summary>The owner's key.</summary>
    public string Key { get; }

    /// <summary>Whether it runs.</summary>
    public bool Runs => !process.HasExited;

    /// <summary>Memory that it holds, native memory of the solver included [MB].</summary>
    public double ResidentMegabytes => ResidentMegabytesOf(process.Id);

    /// <summary>Files and sockets that it holds open.</summary>
    public int Handles => Directory.GetFiles($"/proc/{process.Id}/fd").Length;

    /// <summary>Threads that it has.</summary>
    public int Threads => Directory.GetDirectories($"/proc/{process.Id}/task").Length;

    /// <summary>Memory that a process holds [MB].</summary>
    /// <param name="id">Its number.</param>
    public static double ResidentMegabytesOf(int id)
    {
        var line = File.ReadLines($"/proc/{id}/status").First(one => one.StartsWith("VmRSS:", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    /// <summary>Starts it.</summary>
    /// <param name="settings">Settings, as <c>Limits:CallSeconds</c>.</param>
    public static async Task<ServiceProcess> Start(params (string Name, string Value)[] settings)
    {
        var records = Directory.CreateTempSubdirectory("kitchen-records-");
        var (kept, key) = ApiKey.Make("load", Role.Owner, "2026-01-01T00:00:00.000Z");
        using (var kitchen = new KitchenRecords(records.FullName))
        {
            await kitchen.Keys.CreateAsync(kept);
        }

        var (grpcPort, httpPort) = (FreePort(), FreePort());
        var start = new ProcessStartInfo("dotnet") { RedirectStandardError = true };
        foreach (var word in new[] { Path.Combine(AppContext.BaseDirectory, "SwapSolver.Service.dll"), "--grpc-port", $"{grpcPort}", "--http-port", $"{httpPort}", "--records", records.FullName })
        {
            start.ArgumentList.Add(word);
        }

        // As its unit for systemd starts it.
        (start.Environment["DOTNET_TieredPGO"], start.Environment["DOTNET_GCgen0size"]) = ("1", "0x4000000");
        // One address asks here for a whole town.
        foreach (var (name, value) in settings.Prepend(("Limits:CallerCallsPerSecond", "1000000")).Prepend(("Limits:CallerBurst", "1000000")))
        {
            start.Environment[name.Replace(":", "__", StringComparison.Ordinal)] = value;
        }

        var process = Process.Start(start) ?? throw new InvalidOperationException("the service did not start");
        process.ErrorDataReceived += (_, line) =>
        {
            if (line.Data is { Length: > 0 } text)
            {
                System.Console.Error.WriteLine(text.Length > 500 ? text[..500] : text);
            }
        };
        process.BeginErrorReadLine();
        var service = new ServiceProcess(process, records, grpcPort, httpPort, key);
        await service.Ready();
        return service;
    }

    /// <summary>A channel with the owner's key.</summary>
    public GrpcChannel Open() => GrpcChannel.ForAddress(GrpcAddress, new GrpcChannelOptions
    {
        Credentials = ChannelCredentials.Create(ChannelCredentials.Insecure, CallCredentials.FromInterceptor((_, headers) =>
        {
            headers.Add("authorization", $"Bearer {Key}");
            return Task.CompletedTask;
        })),
        UnsafeUseInsecureChannelCallCredentials = true,
        MaxReceiveMessageSize = null,
        HttpHandler = new SocketsHttpHandler { EnableMultipleHttp2Connections = true },
    });

    /// <summary>A metric that the service shows; 0 where it was not counted yet.</summary>
    /// <param name="isMeant">Which lines are added up.</param>
    public async Task<double> Metric(Func<string, bool> isMeant)
    {
        using var http = new HttpClient { BaseAddress = HttpAddress };
        var page = await http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        return page.Split('\n').Where(line => !line.StartsWith('#') && isMeant(line))
            .Sum(line => double.Parse(line.Split(' ')[1], CultureInfo.InvariantCulture));
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            using var stop = Process.Start("kill", ["-TERM", $"{process.Id}"]);
            using var patience = new CancellationTokenSource(StopTime);
            try
            {
                await process.WaitForExitAsync(patience.Token);
            }
            catch (OperationCanceledException)
            {
                process.Kill();
            }
        }

        process.Dispose();
        records.Delete(recursive: true);
    }

    private async Task Ready()
    {
        using var http = new HttpClient { BaseAddress = HttpAddress };
        for (var began = Stopwatch.StartNew(); began.Elapsed < StartTime && Runs; await Task.Delay(100))
        {
            try
            {
                if ((await http.GetAsync(new Uri("/health/ready", UriKind.Relative))).IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }
        }

        throw new InvalidOperationException("the service is not ready");
    }

    private static Uri Local(int port) => new($"http://127.0.0.1:{port}");

    /// <summary>A port on loopback that nobody uses just now.</summary>
    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
