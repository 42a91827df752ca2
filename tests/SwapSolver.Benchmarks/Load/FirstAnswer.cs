using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace SwapSolver.Benchmarks.Load;

/// <summary>How soon the published console has its first answer, and what the service weighs at rest beside one that does nothing.</summary>
internal static class FirstAnswer
{
    private const int Times = 15;

    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(10);

    /// <summary>Runs it.</summary>
    /// <param name="console">The published console (publish.sh).</param>
    public static async Task<int> Run(string console)
    {
        var records = Directory.CreateTempSubdirectory("kitchen-records-");
        string[][] asked = [["balance", "formulas/almond-rolls"], ["rise", "formulas/almond-rolls"], ["variant", "formulas/almond-rolls", "--without", "milk"]];
        var found = new List<Found>();
        foreach (var words in asked)
        {
            var times = Enumerable.Range(0, Times).Select(_ => Time(console, [.. words, "--records", records.FullName])).ToList();
            found.Add(words[0] == "balance"
                ? Found.AtMost($"the published console, {words[0]}, median [ms]", times.At(0.5).TotalMilliseconds, 400)
                : Found.Told($"the published console, {words[0]}, median", $"{times.At(0.5).TotalMilliseconds:0} ms"));
            found.Add(Found.Told($"quickest and slowest of {Times}", $"{times.Min().TotalMilliseconds:0} and {times.Max().TotalMilliseconds:0} ms"));
        }

        found.AddRange(await AtRest(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(console))!, "service"), records.FullName));
        records.Delete(recursive: true);
        return LoadPage.Write("The first answer, and at rest", found);
    }

    /// <summary>The published services that nobody asks, beside one that does nothing.</summary>
    private static async Task<IEnumerable<Found>> AtRest(string published, string records)
    {
        var socket = Path.Combine(records, "rest.socket");
        using var console = Serve(Path.Combine(published, "SwapSolver.Embedded"), "--embedded-socket", socket, "--records", records);
        using var network = Serve(Path.Combine(published, "SwapSolver.Service"), "--grpc-port", $"{ServiceProcess.FreePort()}", "--http-port", $"{ServiceProcess.FreePort()}", "--records", records);
        using var empty = Serve("dotnet", typeof(FirstAnswer).Assembly.Location, "--empty-service");
        await Task.Delay(Rest);
        var (ours, wide, nothing) = (ServiceProcess.ResidentMegabytesOf(console.Id), ServiceProcess.ResidentMegabytesOf(network.Id), ServiceProcess.ResidentMegabytesOf(empty.Id));
        foreach (var one in new[] { console, network, empty })
        {
            one.Kill();
            await one.WaitForExitAsync();
        }

        return
        [
            Found.Told("resident memory at rest: the console's service, that of a network, one that does nothing (compiled as it runs)", $"{ours:0}, {wide:0} and {nothing:0} MB"),
            Found.AtMost("the console's service beside one that does nothing", ours / nothing, 1.3),
            Found.AtMost("that of a network beside one that does nothing", wide / nothing, 1.3),
        ];
    }

    private static Process Serve(string program, params string[] words) =>
        Process.Start(new ProcessStartInfo(program, words) { RedirectStandardInput = true, RedirectStandardOutput = true })!;

    /// <summary>A gRPC service that can only say that it lives.</summary>
    public static async Task<int> ServeNothing()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(System.Net.IPAddress.Loopback, 0, listen => listen.Protocols = HttpProtocols.Http2));
        builder.Services.AddGrpc();
        builder.Services.AddGrpcHealthChecks();
        var app = builder.Build();
        app.MapGrpcHealthChecksService();
        await app.RunAsync();
        return 0;
    }

    private static TimeSpan Time(string program, IEnumerable<string> words)
    {
        var start = new ProcessStartInfo(program, words) { RedirectStandardOutput = true, RedirectStandardError = true };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        // Its first line is there when its answer is; the rest of the time is its service's end.
        _ = process.StandardOutput.ReadLine() ?? throw new InvalidOperationException(process.StandardError.ReadToEnd());
        var took = clock.Elapsed;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode <= 1 ? took : throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"exit code {process.ExitCode}"));
    }
}
