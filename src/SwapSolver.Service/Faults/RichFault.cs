using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;

namespace SwapSolver.Service.Faults;

/// <summary>Ends of a call with google.rpc details.</summary>
internal static class RichFault
{
    /// <summary>Domain of every ErrorInfo of this service.</summary>
    public const string Domain = "swapsolver";

    /// <summary>An end with details.</summary>
    public static RpcException Of(Code code, string message, params IMessage[] details)
    {
        var status = new Google.Rpc.Status { Code = (int)code, Message = message };
        status.Details.AddRange(details.Select(Any.Pack));
        return status.ToRpcException();
    }

    /// <summary>An end with a stable reason.</summary>
    public static RpcException Of(Code code, string reason, string message) =>
        Of(code, message, new ErrorInfo { Reason = reason, Domain = Domain });

    /// <summary>RESOURCE_EXHAUSTED, with the time after which another try makes sense.</summary>
    public static RpcException Exhausted(string reason, string message, TimeSpan retry) => Of(
        Code.ResourceExhausted,
        message,
        new ErrorInfo { Reason = reason, Domain = Domain },
        new RetryInfo { RetryDelay = Duration.FromTimeSpan(retry) });
}
