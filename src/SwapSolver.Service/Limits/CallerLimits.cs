using System.Threading.RateLimiting;
using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.Service.Faults;

namespace SwapSolver.Service.Limits;

/// <summary>Turns away calls of a caller who asks more often than anyone may, so that one does not take the place of all.
/// A caller is an address; who comes over a private socket is not counted.</summary>
internal sealed class CallerLimits(ServiceLimits limits) : Interceptor, IDisposable
{
    /// <summary>Way to wait where the limiter names none.</summary>
    private static readonly TimeSpan UsualWait = TimeSpan.FromSeconds(1);

    private readonly PartitionedRateLimiter<string> callers = PartitionedRateLimiter.Create<string, string>(caller =>
        RateLimitPartition.GetTokenBucketLimiter(caller, _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = limits.CallerBurst,
            // Filled a tenth of a second at a time where that is a whole call; else one call at a time.
            TokensPerPeriod = Math.Max(1, (int)(limits.CallerCallsPerSecond / 10)),
            ReplenishmentPeriod = TimeSpan.FromSeconds(Math.Max(1, (int)(limits.CallerCallsPerSecond / 10)) / limits.CallerCallsPerSecond),
            QueueLimit = 0,
        }));

    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(request, context);
    }

    /// <inheritdoc/>
    public override Task ServerStreamingServerHandler<TRequest, TResponse>(
        TRequest request, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, ServerStreamingServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(request, responseStream, context);
    }

    /// <inheritdoc/>
    public override Task<TResponse> ClientStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, ServerCallContext context, ClientStreamingServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(requestStream, context);
    }

    /// <inheritdoc/>
    public void Dispose() => callers.Dispose();

    private void Admit(ServerCallContext context)
    {
        if (context.GetHttpContext().Connection.RemoteIpAddress is not { } address)
        {
            return;
        }

        using var lease = callers.AttemptAcquire(address.ToString());
        if (!lease.IsAcquired)
        {
            var wait = lease.TryGetMetadata(MetadataName.RetryAfter, out var retry) ? retry : UsualWait;
            throw RichFault.Exhausted("TOO_MANY_CALLS", "this caller asks more often than anyone may; ask again a little later", wait);
        }
    }
}
