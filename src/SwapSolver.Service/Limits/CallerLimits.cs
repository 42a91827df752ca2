using System.Threading.RateLimiting;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Limits;

/// <summary>Turns away calls of a caller who asks more often than anyone may, so that one does not take the place of all.
/// A caller is an address; who comes over a private socket is not counted.</summary>
internal sealed class CallerLimits(ServiceLimits limits) : Gate, IDisposable
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
    public void Dispose() => callers.Dispose();

    /// <inheritdoc/>
    protected override void Admit(ServerCallContext context)
    {
        if (TryAdmit(context.GetHttpContext(), out var wait))
        {
            return;
        }

        throw RichFault.Later(Code.ResourceExhausted, Reason.TooManyCalls, "this caller asks more often than anyone may; ask again a little later", wait);
    }

    /// <summary>Whether a call's caller may ask now; the call is counted.</summary>
    /// <param name="context">The call.</param>
    public bool TryAdmit(HttpContext context) => TryAdmit(context, out _);

    private bool TryAdmit(HttpContext context, out TimeSpan wait)
    {
        wait = TimeSpan.Zero;
        if (context.Connection.RemoteIpAddress is not { } address)
        {
            return true;
        }

        using var lease = callers.AttemptAcquire(address.ToString());
        if (!lease.IsAcquired)
        {
            wait = lease.TryGetMetadata(MetadataName.RetryAfter, out var retry) ? retry : UsualWait;
        }

        return lease.IsAcquired;
    }
}
