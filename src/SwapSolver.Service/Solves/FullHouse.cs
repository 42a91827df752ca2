using System.Collections.Frozen;
using System.Diagnostics;
using Google.Rpc;
using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.Records;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Watching;
using SwapSolver.V1;

namespace SwapSolver.Service.Solves;

/// <summary>Turns a question away before it is read where all places for solving are taken: to read it first would cost those who are served more
/// than it costs to refuse. Even one whose answer is kept in other words is turned away then; the very same bytes are not
/// (<see cref="AskedBefore"/>).</summary>
internal sealed class FullHouse(SolveRoom room, AccessInterceptor access, CallerLimits callers, CallMeter meter) : Interceptor
{
    /// <summary>Methods that never answer without a solve or a forecast.</summary>
    private static readonly FrozenSet<string> Solving = FrozenSet.Create(
        StringComparer.Ordinal, "CheckSwap", "VaryFormula", "ReplaceIngredient", "ResizeFormula", "ReformulateFormula", "PredictRise", "BakeFormula", "PrintCard");

    private static readonly WrittenEnd Refused = WrittenEnd.Of(SolveRoom.Busy());

    private static readonly string Why = SolveRoom.Busy().GetRpcStatus()!.GetDetail<ErrorInfo>()!.Reason;

    /// <summary>Turns a call away, or passes it on. Who would be turned away for another reason is passed on too: the gates say that.</summary>
    /// <param name="context">The call.</param>
    /// <param name="next">What comes after.</param>
    public Task Answer(HttpContext context, RequestDelegate next)
    {
        var began = Stopwatch.GetTimestamp();
        if (room.IsFull && PlainCall.Is(context.Request) && Contract.MethodOf(context.Request.Path.Value!) is var method && Solving.Contains(method)
            && MayAsk(context, method) && callers.TryAdmit(context))
        {
            context.Response.ContentType = PlainCall.ContentType;
            Refused.Give(context.Response.Headers);
            meter.Refused(method, Why);
            meter.Ended(method, nameof(StatusCode.ResourceExhausted), Stopwatch.GetElapsedTime(began));
            return Task.CompletedTask;
        }

        return next(context);
    }

    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        NeedsAPlace(request, context) && room.IsFull ? throw SolveRoom.Busy() : continuation(request, context);

    /// <summary>Whether a question cannot be answered without a solve or a forecast.</summary>
    private static bool NeedsAPlace(object request, ServerCallContext context) =>
        request is BalanceFormulaRequest { TypicalOnly: false } || Solving.Contains(Contract.MethodOf(context.Method));

    private bool MayAsk(HttpContext context, string method)
    {
        try
        {
            return access.RoleOf(context) is { } role && role >= MethodRoles.Of(method);
        }
        catch (RecordsFaultException)
        {
            return false;
        }
    }
}
