using Grpc.Core;
using Grpc.Core.Interceptors;
using Grpc.Net.Client;
using Grpc.Net.Client.Configuration;

namespace SwapSolver.Console.Asking;

/// <summary>A service that somebody else runs, or several under one name (<c>dns:///</c>): then each call goes to the next of them.</summary>
/// <param name="address">Where it is.</param>
/// <param name="key">The key that is shown to it; null where none is.</param>
internal sealed class RemoteService(Uri address, string? key) : IServiceConnection
{
    private readonly GrpcChannel channel = GrpcChannel.ForAddress(address, new GrpcChannelOptions
    {
        MaxReceiveMessageSize = IServiceConnection.LargestResponseBytes,
        Credentials = address.Scheme == Uri.UriSchemeHttps ? ChannelCredentials.SecureSsl : ChannelCredentials.Insecure,
        ServiceConfig = Advice,
    });

    /// <summary>What callers are advised to do: all services of a name in turn; where none answered, or all places were taken, the same
    /// question again a little later, which is safe, since a question changes nothing and what is written down is the same twice.
    /// What would be there twice is sent once.</summary>
    private static ServiceConfig Advice => new()
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
                    MaxAttempts = 4,
                    InitialBackoff = TimeSpan.FromSeconds(0.25),
                    MaxBackoff = TimeSpan.FromSeconds(4),
                    BackoffMultiplier = 2,
                    RetryableStatusCodes = { StatusCode.Unavailable, StatusCode.ResourceExhausted },
                },
            },
        },
    };

    private static MethodName Of(string service, string method) => new() { Service = $"{V1.Formula.Descriptor.File.Package}.{service}", Method = method };

    /// <inheritdoc/>
    public Task<CallInvoker> ReadyAsync(CancellationToken cancel) => Task.FromResult(key is null
        ? channel.CreateCallInvoker()
        : channel.Intercept(headers =>
        {
            headers.Add("authorization", $"Bearer {key}");
            return headers;
        }));

    /// <inheritdoc/>
    public Task<IReadOnlyList<string>> ExplainSilenceAsync() => Task.FromResult<IReadOnlyList<string>>(
    [
        $"No SwapSolver service answers at {address}.",
        "Check the address: the port is the one for gRPC, 5081 unless the service was told otherwise.",
        "Without --server a service is started for the call.",
    ]);

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        channel.Dispose();
        return ValueTask.CompletedTask;
    }
}
