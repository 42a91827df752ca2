using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.Records;

namespace SwapSolver.Service.Faults;

/// <summary>Gives every end of a call its code: a caller never sees a stack trace, and our own faults are logged.</summary>
internal sealed partial class FaultInterceptor(ILogger<FaultInterceptor> logger) : Interceptor
{
    /// <inheritdoc/>
    public override async Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        await Guarded(context, () => continuation(request, context));

    /// <inheritdoc/>
    public override Task ServerStreamingServerHandler<TRequest, TResponse>(
        TRequest request, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, ServerStreamingServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, async () =>
        {
            await continuation(request, responseStream, context);
            return true;
        });

    /// <inheritdoc/>
    public override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, DuplexStreamingServerMethod<TRequest, TResponse> continuation) =>
        Guarded(context, async () =>
        {
            await continuation(requestStream, responseStream, context);
            return true;
        });

    private async Task<T> Guarded<T>(ServerCallContext context, Func<Task<T>> call)
    {
        try
        {
            return await call();
        }
        catch (OperationCanceledException)
        {
            throw DateTime.UtcNow >= context.Deadline
                ? new RpcException(new Status(StatusCode.DeadlineExceeded, "time ran out; give the call a later deadline"))
                : new RpcException(new Status(StatusCode.Cancelled, "the call was cancelled"));
        }
        catch (RecordsFaultException fault)
        {
            RecordsFailed(logger, context.Method, fault);
            throw new RpcException(new Status(StatusCode.Unavailable, fault.Message));
        }
        catch (Exception fault) when (fault is not RpcException)
        {
            CallFailed(logger, context.Method, fault);
            throw new RpcException(new Status(StatusCode.Internal, "a fault of the service; it has been logged"));
        }
    }

    [LoggerMessage(EventId = 2, Level = LogLevel.Error, Message = "{Method} could not reach the records")]
    private static partial void RecordsFailed(ILogger logger, string method, Exception fault);

    [LoggerMessage(EventId = 1, Level = LogLevel.Error, Message = "{Method} failed")]
    private static partial void CallFailed(ILogger logger, string method, Exception fault);
}
