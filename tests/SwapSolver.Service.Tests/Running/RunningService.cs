using Grpc.Net.Client;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Running;

/// <summary>The service as it is shipped, on loopback ports of its own; only the solver may be another.</summary>
public sealed class RunningService : IAsyncDisposable
{
    private readonly WebApplication app;

    private readonly GrpcChannel channel;

    private RunningService(WebApplication app)
    {
        this.app = app;
        // In the order in which the service names its ports: gRPC first.
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        channel = GrpcChannel.ForAddress(addresses.First());
        Http = new HttpClient { BaseAddress = new Uri(addresses.Last()) };
        Balances = new BalanceService.BalanceServiceClient(channel);
        Substitutions = new SubstitutionService.SubstitutionServiceClient(channel);
        Reformulations = new ReformulationService.ReformulationServiceClient(channel);
        Ingredients = new IngredientService.IngredientServiceClient(channel);
        Measures = new MeasureService.MeasureServiceClient(channel);
        Health = new Grpc.Health.V1.Health.HealthClient(channel);
    }

    public HttpClient Http { get; }

    public BalanceService.BalanceServiceClient Balances { get; }

    public SubstitutionService.SubstitutionServiceClient Substitutions { get; }

    public ReformulationService.ReformulationServiceClient Reformulations { get; }

    public IngredientService.IngredientServiceClient Ingredients { get; }

    public MeasureService.MeasureServiceClient Measures { get; }

    public Grpc.Health.V1.Health.HealthClient Health { get; }

    public static async Task<RunningService> Start(ISolver? solver = null)
    {
        var options = new ServiceOptions(0, 0, null, Path.Combine(AppContext.BaseDirectory, "data"));
        var app = solver is null ? ServiceHost.Build(options) : OtherSolver.In(() => ServiceHost.Build(options), solver);
        await app.StartAsync();
        return new RunningService(app);
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        channel.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
    }
}
