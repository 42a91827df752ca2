using Google.Rpc;
using Grpc.Core;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Faults;

/// <summary>Ends a call whose time ran out with nothing found.</summary>
internal static class OutOfTime
{
    /// <summary>Ends the call where nothing was found in time.</summary>
    /// <exception cref="RpcException">DEADLINE_EXCEEDED.</exception>
    public static void ThrowIf(bool ranOutOfTime)
    {
        if (ranOutOfTime)
        {
            throw Refusal();
        }
    }

    /// <summary>DEADLINE_EXCEEDED.</summary>
    public static RpcException Refusal() => RichFault.Of(
        Code.DeadlineExceeded, "time ran out before any formula was found; give the call a later deadline", RichFault.Info(Reason.OutOfTime));
}
