using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace SwapSolver.Service.Watching;

/// <summary>Metrics to be scraped at <c>/metrics</c>, and traces where a collector is named by the usual variable. What counts is set up
/// by the first call: it weighs a tenth of a service that nobody has asked anything yet.</summary>
internal sealed class Telemetry : IDisposable
{
    private const string Collector = "OTEL_EXPORTER_OTLP_ENDPOINT";

    /// <summary>Series that an instrument may have which tells a few things apart, as a collection's generation or an exception's type.</summary>
    private const int FewSeries = 100;

    /// <summary>From a thousandth of a second to the longest call [s].</summary>
    private static readonly double[] Seconds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30, 60];

    /// <summary>From what the last digits make to no bound at all [1].</summary>
    private static readonly double[] Gaps = [0, 1e-6, 1e-4, 1e-3, 0.01, 0.1, 1];

    /// <summary>Whether instruments of a meter tell every method apart.</summary>
    private static bool HasManySeries(string meter) => meter is CallMeter.Name or "Microsoft.AspNetCore.Hosting" or "Microsoft.AspNetCore.Routing";

    private readonly Lazy<MeterProvider> metrics = new(() => Sdk.CreateMeterProviderBuilder()
        .ConfigureResource(Named)
        .AddMeter(CallMeter.Name)
        .AddRuntimeInstrumentation()
        .AddAspNetCoreInstrumentation()
        // Room is taken for all of them at once, and a few megabytes of it would never be used.
        .AddView(instrument => HasManySeries(instrument.Meter.Name) ? null : new MetricStreamConfiguration { CardinalityLimit = FewSeries })
        .AddView("swapsolver.*.duration", new ExplicitBucketHistogramConfiguration { Boundaries = Seconds })
        .AddView("swapsolver.solve.gap", new ExplicitBucketHistogramConfiguration { Boundaries = Gaps })
        // Fresh at every look: a look is rare, and whoever cancels wants to see the solver let go.
        .AddPrometheusExporter(exporter => exporter.ScrapeResponseCacheDurationMilliseconds = 0)
        .Build());

    /// <summary>What counts, from when it is first looked at.</summary>
    public MeterProvider Metrics => metrics.Value;

    /// <summary>Adds both.</summary>
    public static void Add(WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<Telemetry>();
        if (!string.IsNullOrEmpty(builder.Configuration[Collector]))
        {
            builder.Services.AddOpenTelemetry()
                .ConfigureResource(Named)
                .WithTracing(traces => traces.AddSource(CallMeter.Name).AddAspNetCoreInstrumentation().AddOtlpExporter());
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (metrics.IsValueCreated)
        {
            metrics.Value.Dispose();
        }
    }

    private static void Named(ResourceBuilder resource) => resource.AddService(CallMeter.Name);
}
