using Grpc.Core;
using Microsoft.AspNetCore.Http.Features;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Faults;

/// <summary>A frame that holds no message ends its call before any method is reached, and the framework calls that a fault of
/// the service. It is the sender's mistake, and is told as one.</summary>
internal static class BrokenMessages
{
    private static readonly object Mark = new();

    /// <summary>A call was read and is answered by a method: what ends it from here on is said by us.</summary>
    public static void Passed(HttpContext context) => context.Items[Mark] = true;

    /// <summary>INVALID_ARGUMENT for what is no message.</summary>
    public static RpcException Refusal() => RichFault.Of(
        Google.Rpc.Code.InvalidArgument,
        "what came over the wire is no message of this contract; see its descriptors by reflection, or /openapi/v1.json",
        RichFault.Info(Reason.BrokenMessage));

    /// <summary>Passes a call on, and tells anew how it ended where nothing of ours was reached.</summary>
    public static async Task Tell(HttpContext context, RequestDelegate next)
    {
        await next(context);
        if (context.Items.ContainsKey(Mark))
        {
            return;
        }

        if ((context.Response.HasStarted ? context.Features.Get<IHttpResponseTrailersFeature>()?.Trailers : context.Response.Headers) is { } ends
            && WrittenEnd.CodeOf(ends) is StatusCode.Internal or StatusCode.Unknown)
        {
            WrittenEnd.Of(Refusal()).Give(ends);
        }
    }
}
