namespace SwapSolver.Console.Asking;

/// <summary>Tells on standard error how far a long answer has come. It speaks up within half a second, to scripts as well.</summary>
internal sealed class PieceCount : IDisposable
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(2);

    private readonly string piece;
    private readonly Timer timer;
    private int found;
    private int most;
    private int told = -1;

    /// <summary>Starts to count.</summary>
    /// <param name="piece">What a piece is called.</param>
    public PieceCount(string piece)
    {
        this.piece = piece;
        timer = new Timer(_ => Tell(), null, Patience.Left, Between);
    }

    /// <summary>How far it came, as '3 of at most 9 points'.</summary>
    public string Words => most == 0 ? $"no {piece} yet" : $"{found} of at most {most} {piece}s";

    /// <summary>Counts one piece.</summary>
    public void Add(int mostPieces)
    {
        most = mostPieces;
        Interlocked.Increment(ref found);
    }

    /// <inheritdoc/>
    public void Dispose() => timer.Dispose();

    private void Tell()
    {
        if (Interlocked.Exchange(ref told, found) != found)
        {
            ErrorOutput.Write($"{Words}; Ctrl-C stops it.");
        }
    }
}
