namespace SwapSolver.Solving.Answers;

/// <summary>Time that is left for a question.</summary>
/// <param name="Time">The clock.</param>
/// <param name="End">When it must be answered.</param>
public sealed record Deadline(TimeProvider Time, DateTimeOffset End)
{
    /// <summary>Time left; never below a millisecond, so that a native limit is always a limit.</summary>
    public TimeSpan Left
    {
        get
        {
            var left = End - Time.GetUtcNow();
            return left > TimeSpan.FromMilliseconds(1) ? left : TimeSpan.FromMilliseconds(1);
        }
    }

    /// <summary>Whether the time is over.</summary>
    public bool IsOver => Time.GetUtcNow() >= End;
}
