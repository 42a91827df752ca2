using Grpc.Core;

namespace SwapSolver.Console.Asking;

/// <summary>A service to ask, embedded or elsewhere.</summary>
internal interface IServiceConnection : IAsyncDisposable
{
    /// <summary>Largest response that is taken [bytes]: the whole pantry with all its figures has ample room.</summary>
    const int LargestResponseBytes = 16 << 20;

    /// <summary>Waits until the service can be asked.</summary>
    /// <exception cref="ServiceNotReachedException">It cannot.</exception>
    Task<CallInvoker> ReadyAsync(CancellationToken cancel);

    /// <summary>What to say, a line each, where the service does not answer.</summary>
    Task<IReadOnlyList<string>> ExplainSilenceAsync();
}
