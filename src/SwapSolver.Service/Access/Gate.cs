using Grpc.Core;
using Grpc.Core.Interceptors;

namespace SwapSolver.Service.Access;

/// <summary>Stands before every call, whatever its kind, and lets it through or ends it.</summary>
internal abstract class Gate : Interceptor
{
    /// <inheritdoc/>
    public sealed override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(request, context);
    }

    /// <inheritdoc/>
    public sealed override Task ServerStreamingServerHandler<TRequest, TResponse>(
        TRequest request, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, ServerStreamingServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(request, responseStream, context);
    }

    /// <inheritdoc/>
    public sealed override Task<TResponse> ClientStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, ServerCallContext context, ClientStreamingServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(requestStream, context);
    }

    /// <inheritdoc/>
    public sealed override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream, IServerStreamWriter<TResponse> responseStream, ServerCallContext context, DuplexStreamingServerMethod<TRequest, TResponse> continuation)
    {
        Admit(context);
        return continuation(requestStream, responseStream, context);
    }

    /// <summary>Lets a call through.</summary>
    /// <param name="context">The call.</param>
    /// <exception cref="RpcException">It may not pass.</exception>
    protected abstract void Admit(ServerCallContext context);
}
