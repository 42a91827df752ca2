using Grpc.Core;
using Grpc.Net.Client;

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
        ServiceConfig = CallAdvice.Config,
        InitialReconnectBackoff = CallAdvice.SoonestLook,
        MaxReconnectBackoff = CallAdvice.LatestLook,
    });

    /// <inheritdoc/>
    public Task<CallInvoker> ReadyAsync(CancellationToken cancel) => Task.FromResult(key is null
        ? channel.CreateCallInvoker()
        : CallAdvice.WithKey(channel, key));

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
