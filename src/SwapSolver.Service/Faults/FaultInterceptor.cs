using System.Diagnostics;
using Google.Rpc;
using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.Records;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Faults;

/// <summary>Gives every end of a call its code and details: a caller never sees a stack trace, and our own faults are logged.</summary>
internal sealed partial class FaultInterceptor(ILogger<FaultInterceptor> logger) : Interceptor
{
    /// <summary>When a kitchen's records may be there again.</summary>
    private static readonly TimeSpan RecordsAgain = TimeSpan.FromSeconds(2);

    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, () => continuation(request, context));

    /// <inheritdoc/>
    public override Task ServerStreamingServerHandler<TRequest, TResponse>(
        TRequest request, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, ServerStreamingServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, async () =>
        {
            await continuation(request, responseStream, context);
            return true;
        });

    /// <inheritdoc/>
    public override Task<TResponse> ClientStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, ServerCallContext context, ClientStreamingServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, () => continuation(new ReadRequests<TRequest>(requestStream), context));

    /// <inheritdoc/>
    public override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, DuplexStreamingServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, async () =>
        {
            await continuation(new ReadRequests<TRequest>(requestStream), responseStream, context);
            return true;
        });

    private async Task<T> Guarded<T>(ServerCallContext context, Func<Task<T>> call)
    {
        BrokenMessages.Passed(context.GetHttpContext());
        try
        {
            return await call();
        }
        catch (OperationCanceledException)
        {
            throw DateTime.UtcNow >= context.Deadline
                ? OutOfTime.Refusal()
                : RichFault.Of(Code.Cancelled, "the call was cancelled", RichFault.Info(Reason.CallCancelled));
        }
        catch (RecordsFaultException fault)
        {
            RecordsFailed(logger, context.Method, fault);
            throw RichFault.Later(Code.Unavailable, Reason.RecordsUnreachable, fault.Message, RecordsAgain);
        }
        catch (Exception fault) when (fault is not RpcException)
        {
            var number = Activity.Current?.TraceId.ToString() ?? context.GetHttpContext().TraceIdentifier;
            CallFailed(logger, context.Method, number, fault);
            throw RichFault.Of(
                Code.Internal,
                $"a fault of the service; it has been logged as {number}",
                RichFault.Info(Reason.FaultOfService),
                new RequestInfo { RequestId = number });
        }
    }

    [LoggerMessage(EventId = 2, Level = LogLevel.Error, Message = "{Method} could not reach the records")]
    private static partial void RecordsFailed(ILogger logger, string method, Exception fault);

    [LoggerMessage(EventId = 1, Level = LogLevel.Error, Message = "{Method} failed, told as {Number}")]
    private static partial void CallFailed(ILogger logger, string method, string number, Exception fault);
}
