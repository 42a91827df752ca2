using System.Diagnostics;
using System.Diagnostics.Metrics;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Google.Rpc;
using Microsoft.Extensions.DependencyInjection.Extensions;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Networking.OpenApi;
using SwapSolver.Service.Services;
using SwapSolver.Service.Watching;
using ServiceDescriptor = Microsoft.Extensions.DependencyInjection.ServiceDescriptor;

namespace SwapSolver.Service.Networking;

/// <summary>What is asked in other ways than gRPC: the methods over HTTP/JSON, the pages, the contract's document, the metrics, and
/// the contract by reflection. It is set up when it is first asked for, in a container of its own beside the service's: a tenth of what a
/// service weighs would else stand there for nobody.</summary>
internal sealed class WebSide
{
    private const string Grpc = "application/grpc";

    private const string Reflection = "/grpc.reflection.";

    private const string Document = "/openapi/v1.json";

    private readonly Lazy<(IServiceProvider Rooms, RequestDelegate Answer)> opened;

    /// <summary>Prepares it.</summary>
    /// <param name="service">The service's own container, which made what the two share and closes it.</param>
    /// <param name="rooms">What they share, as it was told to that container.</param>
    public WebSide(IServiceProvider service, IServiceCollection rooms) => opened = new(() => Open(service, rooms));

    /// <summary>Answers what is no call of a method and no question after the service's health, and passes the rest on.</summary>
    /// <param name="context">The call.</param>
    /// <param name="next">What comes after.</param>
    public async Task Answer(HttpContext context, RequestDelegate next)
    {
        if (!Takes(context.Request))
        {
            await next(context);
            return;
        }

        var (rooms, answer) = opened.Value;
        var service = context.RequestServices;
        await using var call = rooms.CreateAsyncScope();
        context.RequestServices = call.ServiceProvider;
        try
        {
            await answer(context);
        }
        finally
        {
            context.RequestServices = service;
        }
    }

    /// <summary>gRPC-Web was told apart before, and is gRPC here.</summary>
    private static bool Takes(Microsoft.AspNetCore.Http.HttpRequest request) =>
        request.ContentType?.StartsWith(Grpc, StringComparison.OrdinalIgnoreCase) ?? false
            ? request.Path.Value!.StartsWith(Reflection, StringComparison.Ordinal)
            : !Network.AsksForHealth(request);

    /// <summary>Sets it up. The container is never closed: what it would close belongs to the service's own.</summary>
    private static (IServiceProvider Rooms, RequestDelegate Answer) Open(IServiceProvider service, IServiceCollection rooms)
    {
        var own = new ServiceCollection();
        own.AddSingleton(service.GetRequiredService<ILoggerFactory>());
        own.AddSingleton(service.GetRequiredService<IMeterFactory>());
        own.AddSingleton(service.GetRequiredService<DiagnosticListener>());
        own.AddSingleton(service.GetRequiredService<IHostApplicationLifetime>());
        own.AddSingleton(service.GetRequiredService<IHostEnvironment>());
        own.AddSingleton(service.GetRequiredService<Telemetry>().Metrics);
        own.AddLogging();
        own.AddRouting();
        Methods.Add(own, service.GetRequiredService<ServiceLimits>(), isEmbedded: false).AddJsonTranscoding(json =>
            json.TypeRegistry = TypeRegistry.FromMessages(BadRequest.Descriptor, ErrorInfo.Descriptor, RetryInfo.Descriptor, RequestInfo.Descriptor));
        own.AddGrpcReflection();
        own.AddGrpcHealthChecks();
        foreach (var kind in rooms.GroupBy(room => room.ServiceType).Where(kind => kind.Key != typeof(IHostedService)))
        {
            foreach (var room in kind)
            {
                own.Add(room.Lifetime == ServiceLifetime.Singleton && kind.Count() == 1 && !room.ServiceType.ContainsGenericParameters
                    ? ServiceDescriptor.Singleton(room.ServiceType, _ => service.GetRequiredService(room.ServiceType))
                    : room);
            }
        }

        var provider = own.BuildServiceProvider();
        var app = new ApplicationBuilder(provider);
        app.UseRouting();
        app.Use(BrokenMessages.Tell);
        app.UseEndpoints(Map);
        app.Run(NothingHere);
        return (provider, app.Build());
    }

    /// <summary>In the form in which the methods over HTTP/JSON tell their faults.</summary>
    private static Task NothingHere(HttpContext context)
    {
        var (asked, response) = (context.Request, context.Response);
        response.StatusCode = StatusCodes.Status404NotFound;
        response.ContentType = "application/json";
        return response.WriteAsync(JsonFormatter.Default.Format(new Google.Rpc.Status
        {
            Code = (int)Code.NotFound,
            Message = $"there is nothing at {RichFault.Short(asked.Method)} {RichFault.Short(asked.Path)}; the addresses stand in {Document}, and the page for readers at /",
        }));
    }

    private static void Map(IEndpointRouteBuilder app)
    {
        Methods.Map(app);
        // Reached on the service's own way; here so that reflection tells of it.
        app.MapGrpcHealthChecksService();
        app.MapGrpcReflectionService();
        app.MapPrometheusScrapingEndpoint("/metrics");
        Pages.Map(app, Path.Combine(AppContext.BaseDirectory, "pages"));
        var document = new Lazy<Task<byte[]>>(() => ContractDocument.Write(Contract.Services));
        app.MapGet(Document, async () => Results.Bytes(await document.Value, "application/json"));
    }
}
