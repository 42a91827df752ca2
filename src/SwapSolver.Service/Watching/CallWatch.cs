using System.Diagnostics;
using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.Service.Access;

namespace SwapSolver.Service.Watching;

/// <summary>Counts every call by its end; stands outermost, so that what others turn away is counted too.</summary>
internal sealed class CallWatch(CallMeter meter) : Interceptor
{
    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        Watched(context, () => continuation(request, context));

    /// <inheritdoc/>
    public override Task ServerStreamingServerHandler<TRequest, TResponse>(
        TRequest request, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, ServerStreamingServerMethod<TRequest, TResponse> continuation) =>
        Watched(context, async () =>
        {
            await continuation(request, responseStream, context);
            return true;
        });

    /// <inheritdoc/>
    public override Task<TResponse> ClientStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, ServerCallContext context, ClientStreamingServerMethod<TRequest, TResponse> continuation) =>
        Watched(context, () => continuation(requestStream, context));

    /// <inheritdoc/>
    public override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, DuplexStreamingServerMethod<TRequest, TResponse> continuation) =>
        Watched(context, async () =>
        {
            await continuation(requestStream, responseStream, context);
            return true;
        });

    private async Task<T> Watched<T>(ServerCallContext context, Func<Task<T>> call)
    {
        var question = Contract.MethodOf(context.Method);
        CallMeter.Question.Value = question;
        var began = Stopwatch.GetTimestamp();
        var code = StatusCode.OK;
        try
        {
            return await call();
        }
        catch (RpcException fault)
        {
            code = fault.StatusCode;
            if (code == StatusCode.ResourceExhausted)
            {
                meter.Refused(question, fault.GetRpcStatus()?.GetDetail<Google.Rpc.ErrorInfo>()?.Reason ?? string.Empty);
            }

            throw;
        }
        finally
        {
            meter.Ended(question, code.ToString(), Stopwatch.GetElapsedTime(began));
        }
    }
}
