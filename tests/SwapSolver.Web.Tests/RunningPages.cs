using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;

namespace SwapSolver.Web.Tests;

/// <summary>The service as it is shipped, a process with records of its own, and its first keys made as an owner makes them.</summary>
internal sealed class RunningPages : IAsyncDisposable
{
    private static readonly TimeSpan StartTime = TimeSpan.FromMinutes(2);

    private readonly DirectoryInfo records = Directory.CreateTempSubdirectory("page-records-");

    private Process? service;

    private RunningPages()
    {
    }

    /// <summary>Where its pages stand.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <summary>Where it answers gRPC.</summary>
    public Uri GrpcAddress { get; private set; } = new("http://127.0.0.1");

    /// <summary>A key of an owner.</summary>
    public string Owner { get; private set; } = string.Empty;

    /// <summary>A key of a reader.</summary>
    public string Reader { get; private set; } = string.Empty;

    /// <summary>The console.</summary>
    public static string Console => Repository.Program("clients/SwapSolver.Console", "swapsolver");

    /// <summary>Starts it.</summary>
    public static async Task<RunningPages> Start()
    {
        var pages = new RunningPages();
        try
        {
            pages.Owner = await pages.MakeKey("owner");
            pages.Reader = await pages.MakeKey("reader");
            await pages.StartService();
        }
        catch
        {
            await pages.DisposeAsync();
            throw;
        }

        return pages;
    }

    public async ValueTask DisposeAsync()
    {
        if (service is not null)
        {
            service.Kill(entireProcessTree: true);
            await service.WaitForExitAsync();
            service.Dispose();
        }

        records.Delete(recursive: true);
    }

    private async Task<string> MakeKey(string role)
    {
        using var console = Process.Start(new ProcessStartInfo(Console, ["keys", "create", role, $"journeys of a {role}", "--records", records.FullName, "--json"]) { RedirectStandardOutput = true })!;
        using var made = JsonDocument.Parse(await console.StandardOutput.ReadToEndAsync());
        await console.WaitForExitAsync();
        return made.RootElement.GetProperty("secret").GetString()!;
    }

    private async Task StartService()
    {
        var (http, grpc) = (FreePort(), FreePort());
        (Address, GrpcAddress) = (new Uri($"http://127.0.0.1:{http}"), new Uri($"http://127.0.0.1:{grpc}"));
        var start = new ProcessStartInfo(
            Repository.Program("src/SwapSolver.Service", "SwapSolver.Service"),
            ["--http-port", $"{http}", "--grpc-port", $"{grpc}", "--records", records.FullName])
        {
            RedirectStandardError = true,
            // All journeys come from one address, and faster than any baker.
            Environment = { ["Limits__CallerBurst"] = "100000", ["Limits__SolvesWaiting"] = "50" },
        };
        service = Process.Start(start)!;
        service.ErrorDataReceived += (_, _) => { };
        service.BeginErrorReadLine();
        using var client = new HttpClient { BaseAddress = Address };
        using var patience = new CancellationTokenSource(StartTime);
        while (!await IsLive(client, patience.Token))
        {
            await Task.Delay(100, patience.Token);
        }
    }

    private static async Task<bool> IsLive(HttpClient client, CancellationToken cancel)
    {
        try
        {
            using var response = await client.GetAsync(new Uri("/health/live", UriKind.Relative), cancel);
            return response.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
