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

    /// <summary>Gives each its address.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGrpcService<BalanceService>();
        app.MapGrpcService<SubstitutionService>();
        app.MapGrpcService<ReformulationService>();
        app.MapGrpcService<BakingService>();
        app.MapGrpcService<IngredientService>();
        app.MapGrpcService<MeasureService>();
        app.MapGrpcService<FormulaService>();
        app.MapGrpcService<KeyService>();
        app.MapGrpcService<TrialService>();
        app.MapGrpcService<RecordService>();
        app.MapGrpcService<CardService>();
        app.MapGrpcService<QuestionService>();
        app.MapGrpcService<JobService>();
    }
}
