using SwapSolver.Console.Screens;

namespace SwapSolver.Console.Asking;

/// <summary>One question to the service, from the words of the caller to the exit code.</summary>
/// <param name="PrepareAsync">Reads what the caller gave; the call, or what is wrong with the input.</param>
/// <param name="Show">Shows the answer to a person.</param>
/// <param name="ExitCodeOf">Whether the answer is a 'no'.</param>
internal sealed record Question<TResponse>(
    Func<CancellationToken, Task<Checked<ServiceCall<TResponse>>>> PrepareAsync,
    Action<Screen, TResponse> Show,
    Func<TResponse, int> ExitCodeOf)
{
    /// <summary>Keeps a part of the answer in a file before it is shown; what went wrong, or null. Null where nothing is kept.</summary>
    public Func<TResponse, CancellationToken, Task<string?>>? KeepAsync { get; init; }

    /// <summary>Whether the answer takes as long as one that comes piece by piece.</summary>
    public bool IsLong { get; init; }
}
