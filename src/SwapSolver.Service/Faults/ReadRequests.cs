using Grpc.Core;

namespace SwapSolver.Service.Faults;

/// <summary>A caller's stream of requests; what is none ends the call as the caller's mistake.</summary>
/// <typeparam name="T">A request.</typeparam>
internal sealed class ReadRequests<T>(IAsyncStreamReader<T> requests) : IAsyncStreamReader<T>
{
    /// <inheritdoc/>
    public T Current => requests.Current;

    /// <inheritdoc/>
    /// <exception cref="RpcException">INVALID_ARGUMENT for what is no message.</exception>
    public async Task<bool> MoveNext(CancellationToken cancellationToken)
    {
        try
        {
            return await requests.MoveNext(cancellationToken);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            // The framework has a kind of exception for each way in which a frame can be wrong, and none of them is ours.
            throw BrokenMessages.Refusal();
        }
    }
}
