namespace SwapSolver.Records.Jobs;

/// <summary>A job as it stands.</summary>
/// <param name="Id">Its id.</param>
/// <param name="DisplayName">What it is called.</param>
/// <param name="Document">What was asked, as JSON.</param>
/// <param name="State">One of <see cref="JobState"/>.</param>
/// <param name="Items">Items that were counted so far.</param>
/// <param name="IsCounted">1 where all are.</param>
/// <param name="Done">Results that are written.</param>
/// <param name="Failed">Those of them that are problems.</param>
/// <param name="Created">When it was asked for (RFC 3339).</param>
/// <param name="Ended">When it ended (RFC 3339); null where it did not.</param>
public sealed record StoredJob(
    string Id, string DisplayName, string Document, string State, long Items, long IsCounted, long Done, long Failed, string Created, string? Ended)
{
    /// <summary>Whether nothing more becomes of it.</summary>
    public bool HasEnded => State is JobState.Done or JobState.Cancelled;
}

/// <summary>Where jobs stand.</summary>
public static class JobState
{
    /// <summary>Is worked on, or will be.</summary>
    public const string Running = "RUNNING";

    /// <summary>Waits to be told to go on.</summary>
    public const string Paused = "PAUSED";

    /// <summary>Was given up; what was written stays.</summary>
    public const string Cancelled = "CANCELLED";

    /// <summary>Every item has its result.</summary>
    public const string Done = "DONE";
}
