using Grpc.Core;
using Grpc.Core.Interceptors;
using Grpc.Net.Client;
using Grpc.Net.Client.Configuration;

namespace SwapSolver.Console.Asking;

/// <summary>How a service on the network is called, as its OPERATIONS page advises; the tests of clusters call by it too.</summary>
internal static class CallAdvice
{
    /// <summary>How soon, and then how seldom at the least, a service that went away is looked for: one that starts again is there before the next stops.</summary>
    public static TimeSpan SoonestLook { get; } = TimeSpan.FromSeconds(0.5);

    /// <summary>The longest wait between two looks.</summary>
    public static TimeSpan LatestLook { get; } = TimeSpan.FromSeconds(2);

    /// <summary>What callers are advised to do: all services of a name in turn; where none answered, or all places were taken, the same
    /// question again a little later, which is safe, since a question changes nothing and what is written down is the same twice.
    /// What would be there twice is sent once.</summary>
    public static ServiceConfig Config => new()
    {
        LoadBalancingConfigs = { new RoundRobinConfig() },
        MethodConfigs =
        {
            new MethodConfig
            {
                Names =
                {
                    Of(nameof(V1.KeyService), nameof(V1.KeyService.KeyServiceClient.CreateKey)),
                    Of(nameof(V1.IngredientService), nameof(V1.IngredientService.IngredientServiceClient.AddIngredient)),
                    Of(nameof(V1.RecordService), nameof(V1.RecordService.RecordServiceClient.ImportRecords)),
                    Of(nameof(V1.RecordService), nameof(V1.RecordService.RecordServiceClient.RestoreRecords)),
                },
            },
            new MethodConfig
            {
                Names = { MethodName.Default },
                RetryPolicy = new RetryPolicy
                {
                    // Longer than a service takes to start: until then those that are left may be full.
                    MaxAttempts = 5,
                    InitialBackoff = TimeSpan.FromSeconds(0.5),
                    MaxBackoff = TimeSpan.FromSeconds(4),
                    BackoffMultiplier = 2,
                    RetryableStatusCodes = { StatusCode.Unavailable, StatusCode.ResourceExhausted },
                },
            },
        },
    };

    private static MethodName Of(string service, string method) => new() { Service = $"{V1.Formula.Descriptor.File.Package}.{service}", Method = method };

    /// <summary>A caller that shows its key with each call.</summary>
    public static CallInvoker WithKey(GrpcChannel channel, string key) => channel.Intercept(headers =>
    {
        headers.Add("authorization", $"Bearer {key}");
        return headers;
    });
}
