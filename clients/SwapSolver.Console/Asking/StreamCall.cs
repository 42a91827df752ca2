using Grpc.Core;

namespace SwapSolver.Console.Asking;

/// <summary>A request that is ready to be sent, and answered piece by piece.</summary>
internal delegate AsyncServerStreamingCall<TResponse> StreamCall<TResponse>(CallInvoker service, CallOptions options);
