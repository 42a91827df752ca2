using Grpc.Core;
using Grpc.Core.Interceptors;
using SwapSolver.V1;

namespace SwapSolver.Service.Solves;

/// <summary>Turns a question away before it is read where all places for solving are taken: to read it first would cost those who are served more
/// than it costs to refuse. Even one whose answer is kept in other words is turned away then; the very same bytes are not
/// (<see cref="AskedBefore"/>).</summary>
internal sealed class FullHouse(SolveRoom room) : Interceptor
{
    /// <inheritdoc/>
    public override Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation) =>
        NeedsAPlace(request) && room.IsFull ? throw SolveRoom.Busy() : continuation(request, context);

    /// <summary>Whether a question cannot be answered without a solve or a forecast.</summary>
    private static bool NeedsAPlace(object request) => request
        is BalanceFormulaRequest { TypicalOnly: false } or CheckSwapRequest or VaryFormulaRequest or ReplaceIngredientRequest
        or ResizeFormulaRequest or ReformulateFormulaRequest or PredictRiseRequest or BakeFormulaRequest or PrintCardRequest;
}
