namespace SwapSolver.Console.Asking;

/// <summary>A line on standard error where a person waits longer than half a second.</summary>
internal sealed class Progress : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(0.5);

    private readonly Timer? timer;

    private Progress(Timer? timer) => this.timer = timer;

    /// <summary>Starts to wait; says nothing where standard error is no terminal.</summary>
    public static Progress Start() => new(System.Console.IsErrorRedirected
        ? null
        : new Timer(_ => ErrorOutput.Write("still working; Ctrl-C stops it."), null, Patience, Timeout.InfiniteTimeSpan));

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();
}
