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

    private readonly DirectoryInfo records;

    private RunningService(WebApplication app, DirectoryInfo records)
    {
        this.app = app;
        this.records = records;
        // In the order in which the service names its ports: gRPC first.
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        GrpcAddress = new Uri(addresses.First());
        channel = GrpcChannel.ForAddress(GrpcAddress);
        Http = new HttpClient { BaseAddress = new Uri(addresses.Last()) };
        Balances = new BalanceService.BalanceServiceClient(channel);
        Substitutions = new SubstitutionService.SubstitutionServiceClient(channel);
        Reformulations = new ReformulationService.ReformulationServiceClient(channel);
        Baking = new BakingService.BakingServiceClient(channel);
        Ingredients = new IngredientService.IngredientServiceClient(channel);
        Cards = new CardService.CardServiceClient(channel);
        Measures = new MeasureService.MeasureServiceClient(channel);
        Formulas = new FormulaService.FormulaServiceClient(channel);
        Health = new Grpc.Health.V1.Health.HealthClient(channel);
    }

    /// <summary>The service's own parts.</summary>
    public IServiceProvider Parts => app.Services;

    /// <summary>Where it answers gRPC.</summary>
    public Uri GrpcAddress { get; }

    /// <summary>A channel to it.</summary>
    public GrpcChannel Channel => channel;

    /// <summary>Folder of the kitchen's records.</summary>
    public string Records => records.FullName;

    public HttpClient Http { get; }

    public BalanceService.BalanceServiceClient Balances { get; }

    public SubstitutionService.SubstitutionServiceClient Substitutions { get; }

    public ReformulationService.ReformulationServiceClient Reformulations { get; }

    public BakingService.BakingServiceClient Baking { get; }

    public IngredientService.IngredientServiceClient Ingredients { get; }

    public CardService.CardServiceClient Cards { get; }

    public MeasureService.MeasureServiceClient Measures { get; }

    public FormulaService.FormulaServiceClient Formulas { get; }

    public Grpc.Health.V1.Health.HealthClient Health { get; }

    public static async Task<RunningService> Start(ISolver? solver = null, params (string Name, string Value)[] settings)
    {
        // Records of its own: what a developer's kitchen measured must not move a test.
        var records = Directory.CreateTempSubdirectory("kitchen-records-");
        var options = new ServiceOptions(0, 0, null, Path.Combine(AppContext.BaseDirectory, "data"), records.FullName);
        // A test asks more often than any caller does.
        var given = settings.Prepend((Name: "Limits:CallerBurst", Value: "100000")).GroupBy(one => one.Name).ToDictionary(group => group.Key, group => (string?)group.Last().Value);
        var app = solver is null ? ServiceHost.Build(options, given) : OtherSolver.In(() => ServiceHost.Build(options, given), solver);
        await app.StartAsync();
        return new RunningService(app, records);
    }

    /// <summary>Tells it to stop; done when it has.</summary>
    public Task Stop() => app.StopAsync();

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        channel.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        records.Delete(recursive: true);
    }
}
