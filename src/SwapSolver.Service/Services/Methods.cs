using Grpc.AspNetCore.Server;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Watching;

namespace SwapSolver.Service.Services;

/// <summary>Every method of the contract, and what stands before each of them.</summary>
internal static class Methods
{
    private const string Package = "swapsolver.v1.";

    // By name, for a class that serves has the name of its service; each written out, so that a compiler ahead of time sees what is served.
    private static readonly Dictionary<string, Action<IEndpointRouteBuilder>> Given = new(StringComparer.Ordinal)
    {
        [Package + nameof(BalanceService)] = static app => app.MapGrpcService<BalanceService>(),
        [Package + nameof(SubstitutionService)] = static app => app.MapGrpcService<SubstitutionService>(),
        [Package + nameof(ReformulationService)] = static app => app.MapGrpcService<ReformulationService>(),
        [Package + nameof(BakingService)] = static app => app.MapGrpcService<BakingService>(),
        [Package + nameof(IngredientService)] = static app => app.MapGrpcService<IngredientService>(),
        [Package + nameof(MeasureService)] = static app => app.MapGrpcService<MeasureService>(),
        [Package + nameof(FormulaService)] = static app => app.MapGrpcService<FormulaService>(),
        [Package + nameof(KeyService)] = static app => app.MapGrpcService<KeyService>(),
        [Package + nameof(TrialService)] = static app => app.MapGrpcService<TrialService>(),
        [Package + nameof(RecordService)] = static app => app.MapGrpcService<RecordService>(),
        [Package + nameof(CardService)] = static app => app.MapGrpcService<CardService>(),
        [Package + nameof(QuestionService)] = static app => app.MapGrpcService<QuestionService>(),
        [Package + nameof(JobService)] = static app => app.MapGrpcService<JobService>(),
    };

    /// <summary>Adds what serves them.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="limits">The limits of the service.</param>
    /// <param name="isEmbedded">Whether one console alone is served, which is nobody to keep count of.</param>
    /// <returns>What can be set up further.</returns>
    public static IGrpcServerBuilder Add(IServiceCollection services, ServiceLimits limits, bool isEmbedded) => services.AddGrpc(server =>
    {
        server.Interceptors.Add<CallWatch>();
        server.Interceptors.Add<FaultInterceptor>();
        if (!isEmbedded)
        {
            server.Interceptors.Add<CallerLimits>();
        }

        server.Interceptors.Add<AccessInterceptor>();
        server.Interceptors.Add<FullHouse>();
        server.MaxReceiveMessageSize = limits.MessageBytes;
    });

    /// <summary>Gives all their addresses.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        foreach (var give in Given.Values)
        {
            give(app);
        }
    }

    /// <summary>What gives the methods of a service their addresses; null where there is no such service.</summary>
    /// <param name="service">Its name in the contract.</param>
    public static Action<IEndpointRouteBuilder>? Of(string service) => Given.GetValueOrDefault(service);
}
