using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Watching;

namespace SwapSolver.Service.Networking;

/// <summary>What the service has beside its methods where it stands on a network: health, gRPC-Web, headers, and the way to what is asked seldom.</summary>
internal static class Network
{
    /// <summary>Below it stands whether the service is well.</summary>
    private const string Health = "/health";

    private const string Ready = "ready";

    /// <summary>Hosts by which a service on loopback may be called: a page of another origin cannot borrow its name.</summary>
    private const string UsualHosts = "localhost;127.0.0.1;[::1]";

    /// <summary>A page that is no page of ours gets no script, no frame and no picture from an answer.</summary>
    private const string AnswerPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>When the service first says by itself whether it is ready, after its start.</summary>
    private static readonly TimeSpan FirstLook = TimeSpan.FromSeconds(1);

    /// <summary>Whether a call over HTTP asks only whether the service is well.</summary>
    public static bool AsksForHealth(Microsoft.AspNetCore.Http.HttpRequest request) => request.Path.StartsWithSegments(Health, StringComparison.OrdinalIgnoreCase);

    /// <summary>Adds what they need.</summary>
    public static void Add(WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<AskedBefore>();
        builder.Services.AddGrpcHealthChecks(options => options.Services.Map(string.Empty, context => context.Tags.Contains(Ready)))
            .AddCheck<Readiness>(Ready, tags: [Ready]);
        // Told at once, and while the start is not over: what the first look leaves behind is given back with the rest (StartLeftovers).
        builder.Services.Configure<HealthCheckPublisherOptions>(publisher => publisher.Delay = FirstLook);
        var hosts = builder.Configuration["AllowedHosts"];
        builder.Services.AddHostFiltering(filter =>
            filter.AllowedHosts = [.. (string.IsNullOrEmpty(hosts) ? UsualHosts : hosts).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]);
        if (OriginsOf(builder.Configuration) is { Length: > 0 } origins)
        {
            builder.Services.AddCors(cors => cors.AddDefaultPolicy(policy => policy
                .WithOrigins(origins)
                .WithMethods("GET", "POST", "PATCH", "DELETE")
                .WithHeaders("content-type", "x-grpc-web", "x-user-agent", "grpc-timeout", "authorization")
                .WithExposedHeaders("grpc-status", "grpc-message", "grpc-status-details-bin")));
        }
    }

    /// <summary>What every call goes through.</summary>
    /// <param name="app">The service.</param>
    /// <param name="rooms">What its methods need, as it was told to its container.</param>
    public static void Use(WebApplication app, IServiceCollection rooms)
    {
        var telemetry = app.Services.GetRequiredService<Telemetry>();
        app.Use((context, next) =>
        {
            // Who asks only whether the service is well has asked nothing of it.
            _ = AsksForHealth(context.Request) ? null : telemetry.Metrics;
            return next(context);
        });
        app.UseHostFiltering();
        app.Use((context, next) =>
        {
            var headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            headers.ContentSecurityPolicy = AnswerPolicy;
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            return next(context);
        });
        app.Use(app.Services.GetRequiredService<AskedBefore>().Answer);
        app.Use(app.Services.GetRequiredService<FullHouse>().Answer);
        // Without it, as usual, no page of another origin may read an answer.
        if (OriginsOf(app.Configuration).Length > 0)
        {
            app.UseCors();
        }

        app.UseGrpcWeb(new GrpcWebOptions { DefaultEnabled = true });
        app.Use(new WebSide(app.Services, rooms).Answer);
        app.Use(BrokenMessages.Tell);
    }

    /// <summary>What is asked beside the methods.</summary>
    public static void Map(WebApplication app)
    {
        app.UseRouting();
        app.MapGrpcHealthChecksService();
        // Live: the process answers. Ready: it can solve and reach its records, and was not told to stop.
        app.MapHealthChecks($"{Health}/live", new HealthCheckOptions { Predicate = _ => false });
        app.MapHealthChecks($"{Health}/ready", new HealthCheckOptions { Predicate = check => check.Tags.Contains(Ready) });
    }

    /// <summary>The other origins whose pages may read answers.</summary>
    private static string[] OriginsOf(IConfiguration configuration) =>
        configuration["AllowedOrigins"]?.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];
}
