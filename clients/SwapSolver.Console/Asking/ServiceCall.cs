using Grpc.Core;

namespace SwapSolver.Console.Asking;

/// <summary>A request that is ready to be sent.</summary>
internal delegate Task<TResponse> ServiceCall<TResponse>(CallInvoker service, CallOptions options);
