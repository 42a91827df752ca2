namespace SwapSolver.Console.Asking;

/// <summary>The service could not be started or reached; each line is for the caller to read.</summary>
internal sealed class ServiceNotReachedException(params IReadOnlyList<string> lines) : Exception(string.Join(' ', lines))
{
    /// <summary>What happened and what to do, a line each.</summary>
    public IReadOnlyList<string> Lines { get; } = lines;
}
