using System.Net.Http.Headers;
using Grpc.Core;
using Grpc.Core.Interceptors;
using Grpc.Net.Client;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using SwapSolver.Records;
using SwapSolver.Service.Access;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Running;

/// <summary>The service as it is shipped, on loopback ports of its own; only the solver may be another.</summary>
public sealed class RunningService : IAsyncDisposable
{
    private static readonly Lock Building = new();

    private readonly WebApplication app;

    private readonly GrpcChannel channel;

    private readonly DirectoryInfo records;

    private RunningService(WebApplication app, DirectoryInfo records, string key)
    {
        this.app = app;
        this.records = records;
        // In the order in which the service names its ports: gRPC first.
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        GrpcAddress = new Uri(addresses.First());
        channel = GrpcChannel.ForAddress(GrpcAddress);
        Address = addresses.First();
        Key = key;
        var invoker = With(key);
        Http = new HttpClient { BaseAddress = new Uri(addresses.Last()), DefaultRequestHeaders = { Authorization = new AuthenticationHeaderValue("Bearer", key) } };
        Balances = new BalanceService.BalanceServiceClient(invoker);
        Substitutions = new SubstitutionService.SubstitutionServiceClient(invoker);
        Reformulations = new ReformulationService.ReformulationServiceClient(invoker);
        Baking = new BakingService.BakingServiceClient(invoker);
        Ingredients = new IngredientService.IngredientServiceClient(invoker);
        Cards = new CardService.CardServiceClient(invoker);
        Measures = new MeasureService.MeasureServiceClient(invoker);
        Questions = new QuestionService.QuestionServiceClient(invoker);
        Formulas = new FormulaService.FormulaServiceClient(invoker);
        Trials = new TrialService.TrialServiceClient(invoker);
        Whole = new RecordService.RecordServiceClient(invoker);
        Keys = new KeyService.KeyServiceClient(invoker);
        Health = new Grpc.Health.V1.Health.HealthClient(invoker);
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

    public QuestionService.QuestionServiceClient Questions { get; }

    public FormulaService.FormulaServiceClient Formulas { get; }

    public KeyService.KeyServiceClient Keys { get; }

    public RecordService.RecordServiceClient Whole { get; }

    public TrialService.TrialServiceClient Trials { get; }

    /// <summary>Where it listens for gRPC.</summary>
    public string Address { get; }

    public Grpc.Health.V1.Health.HealthClient Health { get; }

    /// <summary>One host is built at a time: the event by which a solver is replaced is raised for the whole process.</summary>
    private static WebApplication Built(ServiceOptions options, Dictionary<string, string?> given, ISolver? solver)
    {
        lock (Building)
        {
            return solver is null ? ServiceHost.Build(options, given) : OtherSolver.In(() => ServiceHost.Build(options, given), solver);
        }
    }

    public static async Task<RunningService> Start(ISolver? solver = null, string? place = null, params (string Name, string Value)[] settings)
    {
        // Records of its own: what a developer's kitchen measured must not move a test.
        var records = Directory.CreateTempSubdirectory("kitchen-records-");
        var options = new ServiceOptions(0, 0, null, Path.Combine(AppContext.BaseDirectory, "data"), place ?? records.FullName);
        // A test asks more often than any caller does.
        var given = settings.Prepend((Name: "Limits:CallerBurst", Value: "100000")).GroupBy(one => one.Name).ToDictionary(group => group.Key, group => (string?)group.Last().Value);
        var app = Built(options, given, solver);
        await app.StartAsync();
        // As a kitchen's owner makes the first key on the service's own machine.
        var (kept, key) = ApiKey.Make("tests", Role.Owner, "2026-01-01T00:00:00.000Z");
        await app.Services.GetRequiredService<KitchenRecords>().Keys.CreateAsync(kept);
        return new RunningService(app, records, key);
    }

    /// <summary>Tells it to stop; done when it has.</summary>
    public Task Stop() => app.StopAsync();

    /// <summary>The owner's key.</summary>
    public string Key { get; }

    /// <summary>Calls with another key than the owner's; null for none.</summary>
    public CallInvoker With(string? key) => key is null ? channel.CreateCallInvoker() : channel.Intercept(headers =>
    {
        headers.Add("authorization", $"Bearer {key}");
        return headers;
    });

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        channel.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        records.Delete(recursive: true);
    }
}
