using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Answering;

/// <summary>Tells on standard error how many rows are answered, from half a second on.</summary>
internal sealed class RowCount : IDisposable
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(2);

    private readonly Timer timer;

    private int told = -1;

    /// <summary>Starts to tell.</summary>
    /// <param name="answered">How many rows are answered now.</param>
    public RowCount(Func<int> answered) => timer = new Timer(
        _ =>
        {
            if (answered() is var now && Interlocked.Exchange(ref told, now) != now)
            {
                ErrorOutput.Write($"{Words(now)} answered; Ctrl-C stops it.");
            }
        },
        null,
        Patience.Left,
        Between);

    /// <summary>So many rows in words.</summary>
    public static string Words(int rows) => rows == 1 ? "1 row" : $"{rows} rows";

    /// <inheritdoc/>
    public void Dispose() => timer.Dispose();
}
