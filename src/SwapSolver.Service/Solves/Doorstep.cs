using System.Threading.RateLimiting;

namespace SwapSolver.Service.Solves;

/// <summary>Where calls wait unread while all places for solving are taken. Of those who would wait too many the one is turned away that stands there longest:
/// as many are served as if the newcomer were, but nobody who is served has waited for long, and to turn away who is not read costs next to nothing.
/// Whoever still stands there after a while goes in and waits inside, where deadlines are kept.</summary>
/// <param name="time">The clock.</param>
/// <param name="places">The places for solving, and those who wait for one inside.</param>
/// <param name="most">Calls that may wait, at the door and inside, 1 and more.</param>
internal sealed class Doorstep(TimeProvider time, ConcurrencyLimiter places, int most)
{
    /// <summary>Longest that a call stands at the door: who is turned away shall know it at once.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(25);

    private readonly Lock door = new();

    private readonly LinkedList<TaskCompletionSource<Pass?>> standing = new();

    private int onTheWayToAPlace;

    private int onTheWayToWait;

    /// <summary>Calls that stand at the door, or were let in to wait.</summary>
    public int Waiting
    {
        get
        {
            lock (door)
            {
                return standing.Count + onTheWayToWait;
            }
        }
    }

    /// <summary>Comes to the door. Null for who is turned away; else to be disposed when the call ends.</summary>
    /// <param name="cancel">The end of the call.</param>
    /// <exception cref="OperationCanceledException">The caller left.</exception>
    public ValueTask<Pass?> Come(CancellationToken cancel)
    {
        lock (door)
        {
            // Within the lock: a place that is given back meanwhile would be seen by nobody until the next.
            var (free, waiting) = Inside();
            if (standing.Count == 0 && free > onTheWayToAPlace)
            {
                onTheWayToAPlace++;
                return ValueTask.FromResult<Pass?>(new Pass(this, toAPlace: true));
            }

            if (standing.Count + onTheWayToWait + waiting >= most)
            {
                if (standing.First is not { } oldest)
                {
                    return ValueTask.FromResult<Pass?>(null);
                }

                standing.Remove(oldest);
                oldest.Value.SetResult(null);
            }

            // Whoever lets it in goes on with its own work.
            var turn = standing.AddLast(new TaskCompletionSource<Pass?>(TaskCreationOptions.RunContinuationsAsynchronously));
            return new ValueTask<Pass?>(Stand(turn, cancel));
        }
    }

    /// <summary>Lets those in that stand at the door, as many as there are places.</summary>
    public void LetIn()
    {
        lock (door)
        {
            var (free, _) = Inside();
            while (free > onTheWayToAPlace && standing.First is { } next)
            {
                standing.Remove(next);
                onTheWayToAPlace++;
                next.Value.SetResult(new Pass(this, toAPlace: true));
            }
        }
    }

    private (int Free, int Waiting) Inside() =>
        places.GetStatistics() is { } now ? ((int)now.CurrentAvailablePermits, (int)now.CurrentQueuedCount) : (0, 0);

    private async Task<Pass?> Stand(LinkedListNode<TaskCompletionSource<Pass?>> turn, CancellationToken cancel)
    {
        await using var left = cancel.Register(() => End(turn, isInside: false, cancel));
        await using var patience = time.CreateTimer(_ => End(turn, isInside: true, cancel), null, Longest, Timeout.InfiniteTimeSpan);
        return await turn.Value.Task;
    }

    private void End(LinkedListNode<TaskCompletionSource<Pass?>> turn, bool isInside, CancellationToken cancel)
    {
        lock (door)
        {
            if (turn.List is null)
            {
                return;
            }

            standing.Remove(turn);
            if (isInside)
            {
                onTheWayToWait++;
                turn.Value.SetResult(new Pass(this, toAPlace: false));
            }
            else
            {
                turn.Value.SetCanceled(cancel);
            }
        }
    }

    private void Arrived(bool toAPlace)
    {
        lock (door)
        {
            (onTheWayToAPlace, onTheWayToWait) = toAPlace ? (onTheWayToAPlace - 1, onTheWayToWait) : (onTheWayToAPlace, onTheWayToWait - 1);
        }

        LetIn();
    }

    /// <summary>A call that was let in.</summary>
    /// <param name="door">The door.</param>
    /// <param name="toAPlace">Whether a place is kept for it.</param>
    internal sealed class Pass(Doorstep door, bool toAPlace) : IDisposable
    {
        private int isThere;

        /// <summary>The call has its place, or waits for one inside, or ended without needing one.</summary>
        public void Dispose()
        {
            if (Interlocked.Exchange(ref isThere, 1) == 0)
            {
                door.Arrived(toAPlace);
            }
        }
    }
}
