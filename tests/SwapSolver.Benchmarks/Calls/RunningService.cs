using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using SwapSolver.Service;

namespace SwapSolver.Benchmarks.Calls;

/// <summary>The real service on free loopback ports.</summary>
internal sealed class RunningService : IAsyncDisposable
{
    private readonly WebApplication app;

    private RunningService(WebApplication app, string grpcAddress)
    {
        this.app = app;
        GrpcAddress = grpcAddress;
    }

    /// <summary>Where gRPC is spoken.</summary>
    public string GrpcAddress { get; }

    /// <summary>Starts the service.</summary>
    public static async Task<RunningService> Start()
    {
        var records = Directory.CreateTempSubdirectory("kitchen-records-");
        var app = ServiceHost.Build(new ServiceOptions(0, 0, null, Path.Combine(AppContext.BaseDirectory, "data"), records.FullName), [new("Limits:CallerCallsPerSecond", "1000000"), new("Limits:CallerBurst", "1000000")]);
        await app.StartAsync();
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        return new RunningService(app, addresses.First());
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await app.StopAsync();
        await app.DisposeAsync();
    }
}
