using Grpc.Core;
using Grpc.Net.Client;

namespace SwapSolver.Console.Asking;

/// <summary>A service that somebody else runs.</summary>
internal sealed class RemoteService(Uri address) : IServiceConnection
{
    private readonly GrpcChannel channel = GrpcChannel.ForAddress(address, new GrpcChannelOptions
    {
        MaxReceiveMessageSize = IServiceConnection.LargestResponseBytes,
    });

    /// <inheritdoc/>
    public Task<CallInvoker> ReadyAsync(CancellationToken cancel) => Task.FromResult(channel.CreateCallInvoker());

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
