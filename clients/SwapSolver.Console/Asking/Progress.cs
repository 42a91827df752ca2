namespace SwapSolver.Console.Asking;

/// <summary>A line on standard error where an answer takes half a second, to scripts as well.</summary>
internal sealed class Progress : IDisposable
{
    private readonly Timer timer;

    private Progress(Timer timer) => this.timer = timer;

    /// <summary>Starts to wait.</summary>
    public static Progress Start() =>
        new(new Timer(_ => ErrorOutput.Write("still working; Ctrl-C stops it."), null, Patience.Left, Timeout.InfiniteTimeSpan));

    /// <inheritdoc/>
    public void Dispose() => timer.Dispose();
}
