using SwapSolver.Console.Screens;

namespace SwapSolver.Console.Asking;

/// <summary>One question that is answered piece by piece.</summary>
/// <param name="Piece">What a piece is called, as 'point'.</param>
/// <param name="PrepareAsync">Reads what the caller gave; the call, or what is wrong with the input.</param>
/// <param name="MostOf">How many pieces there will be at most, as a piece tells.</param>
/// <param name="Show">Shows the pieces to a person.</param>
internal sealed record StreamedQuestion<TResponse>(
    string Piece,
    Func<CancellationToken, Task<Checked<StreamCall<TResponse>>>> PrepareAsync,
    Func<TResponse, int> MostOf,
    Action<Screen, IReadOnlyList<TResponse>> Show);
