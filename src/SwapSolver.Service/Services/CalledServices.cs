using System.Collections.Concurrent;

namespace SwapSolver.Service.Services;

/// <summary>Passes a call to its method. A service of the contract is set up when it is first called: a console that starts a program of its
/// own for one question would else wait for the methods of thirteen.</summary>
/// <param name="rooms">What the methods need.</param>
internal sealed class CalledServices(IServiceProvider rooms)
{
    private readonly ConcurrentDictionary<string, Lazy<RequestDelegate>> called = new(StringComparer.Ordinal);

    /// <summary>Answers a call of a method of the contract, and passes any other on.</summary>
    /// <param name="context">The call.</param>
    /// <param name="next">What comes after.</param>
    public Task Answer(HttpContext context, RequestDelegate next)
    {
        var service = ServiceOf(context.Request.Path.Value!);
        if (called.TryGetValue(service, out var before))
        {
            return before.Value(context);
        }

        return Methods.Of(service) is { } give
            ? called.GetOrAdd(service, _ => new Lazy<RequestDelegate>(() => Open(give))).Value(context)
            : next(context);
    }

    /// <summary>Name of the service that a path leads to; empty where it leads to none.</summary>
    private static string ServiceOf(string path) => path.LastIndexOf('/') is > 1 and var end ? path[1..end] : string.Empty;

    private RequestDelegate Open(Action<IEndpointRouteBuilder> give)
    {
        var app = new ApplicationBuilder(rooms);
        app.UseRouting();
        app.UseEndpoints(give);
        return app.Build();
    }
}
