using System.Buffers;
using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Diagnostics;
using Google.Protobuf;
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

/// <summary>Keeps questions that need a place for solving at the door, unread, while all places are taken, and turns those away who would wait too many: to
/// read them first would cost those who are served more than it costs to refuse. One whose answer is kept in other words waits and is turned away like
/// any other; the very same bytes are not (<see cref="AskedBefore"/>), nor is who asks in the same bytes what is being answered. HTTP/JSON and
/// pages are read first, and turned away then; so is a check of a swap, which often needs no solve and says so by its sums.</summary>
internal sealed class FullHouse(SolveRoom room, AccessInterceptor access, CallerLimits callers, CallMeter meter) : Interceptor
{
    /// <summary>Methods that never answer without a solve or a forecast.</summary>
    private static readonly FrozenSet<string> Solving = FrozenSet.Create(
        StringComparer.Ordinal, "VaryFormula", "ReplaceIngredient", "ResizeFormula", "ReformulateFormula", "PredictRise", "BakeFormula", "PrintCard");

    /// <summary>The one that may, where its question asks for no ranges.</summary>
    private const string Balance = "BalanceFormula";

    private static readonly uint TypicalOnlyTag = WireFormat.MakeTag(BalanceFormulaRequest.TypicalOnlyFieldNumber, WireFormat.WireType.Varint);

    private static readonly WrittenEnd Refused = WrittenEnd.Of(SolveRoom.Busy());

    private static readonly string Why = SolveRoom.Busy().GetRpcStatus()!.GetDetail<ErrorInfo>()!.Reason;

    /// <summary>What is being answered, by its bytes.</summary>
    private readonly ConcurrentDictionary<(string Method, UInt128 Question), bool> inside = new();

    /// <summary>Turns a call away, lets it wait, or passes it on. Who would be turned away for another reason is passed on too: the gates say that.</summary>
    /// <param name="context">The call.</param>
    /// <param name="next">What comes after.</param>
    /// <exception cref="OperationCanceledException">The caller left.</exception>
    public async Task Answer(HttpContext context, RequestDelegate next)
    {
        var began = Stopwatch.GetTimestamp();
        if (MethodOf(context.Request) is not { } method || !MayAsk(context, method))
        {
            await next(context);
        }
        else if (!await TryGoIn(context, method, next))
        {
            if (!callers.TryAdmit(context))
            {
                await next(context);
                return;
            }

            context.Response.ContentType = PlainCall.ContentType;
            Refused.Give(context.Response.Headers);
            meter.Refused(method, Why);
            meter.Ended(method, nameof(StatusCode.ResourceExhausted), Stopwatch.GetElapsedTime(began));
        }
    }

    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        NeedsAPlace(request, context) && room.IsFull && !SolveRoom.WasLetIn(context.GetHttpContext()) ? throw SolveRoom.Busy() : continuation(request, context);

    /// <summary>Whether a question cannot be answered without a solve or a forecast.</summary>
    private static bool NeedsAPlace(object request, ServerCallContext context) =>
        request is BalanceFormulaRequest { TypicalOnly: false } || Solving.Contains(Contract.MethodOf(context.Method));

    private static string? MethodOf(Microsoft.AspNetCore.Http.HttpRequest request) =>
        PlainCall.Is(request) && Contract.MethodOf(request.Path.Value!) is var method && (Solving.Contains(method) || method == Balance) ? method : null;

    /// <summary>Whether a balance asks for typical figures only, by its bytes. What is no message needs no place: it is told as one where it is read.</summary>
    private static bool IsTypicalOnly(ReadOnlySequence<byte> question)
    {
        try
        {
            var fields = new CodedInputStream(question.Slice(PlainCall.PrefixBytes).ToArray());
            var isTypicalOnly = false;
            while (fields.ReadTag() is var tag && tag != 0)
            {
                if (tag == TypicalOnlyTag)
                {
                    isTypicalOnly = fields.ReadBool();
                }
                else
                {
                    fields.SkipLastField();
                }
            }

            return isTypicalOnly;
        }
        catch (InvalidProtocolBufferException)
        {
            return true;
        }
    }

    /// <summary>Goes in with a call, at once or after a while at the door; false for who is turned away.</summary>
    private async Task<bool> TryGoIn(HttpContext context, string method, RequestDelegate next)
    {
        var question = PlainCall.DigestOf(context);
        // No place is kept for who may never say what is asked.
        if (question is null && method != Balance && room.IsFull)
        {
            return false;
        }

        // Who asks what is being answered waits for that answer and needs no place.
        if (question is not { } asked || inside.ContainsKey((method, asked)) || (method == Balance && PlainCall.Look(context.Request, IsTypicalOnly) is true))
        {
            await next(context);
            return true;
        }

        return await room.TryEnter(context, async () =>
        {
            var isFirst = inside.TryAdd((method, asked), true);
            try
            {
                await next(context);
            }
            finally
            {
                if (isFirst)
                {
                    inside.TryRemove((method, asked), out _);
                }
            }
        });
    }

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
