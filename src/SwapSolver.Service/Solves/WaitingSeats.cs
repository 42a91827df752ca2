namespace SwapSolver.Service.Solves;

/// <summary>Who waits for a place of solving, and for how long. In a house that is full for long, whoever comes anew takes the seat of who waits longest:
/// no more are turned away than if it were refused itself, but nobody who is served has waited for long.</summary>
/// <param name="time">The clock.</param>
internal sealed class WaitingSeats(TimeProvider time)
{
    /// <summary>Who just sat down is not sent away: a seat that changes with every call costs more than it saves.</summary>
    public static readonly TimeSpan Least = TimeSpan.FromMilliseconds(4);

    /// <summary>Who waits for longer than this keeps the seat: to be refused late is worse than to wait, and a refusal shall be known at once.</summary>
    public static readonly TimeSpan Most = TimeSpan.FromMilliseconds(25);

    private readonly Lock door = new();

    private readonly LinkedList<Seat> taken = new();

    /// <summary>Takes a seat, until it is disposed.</summary>
    /// <param name="cancel">The end of the call that waits.</param>
    public Seat Take(CancellationToken cancel)
    {
        var seat = new Seat(this, time.GetTimestamp(), cancel);
        lock (door)
        {
            taken.AddLast(seat);
        }

        return seat;
    }

    /// <summary>Sends away who waits longest of those that may be sent away. False where there is nobody.</summary>
    public bool TryFree()
    {
        Seat? freed;
        lock (door)
        {
            freed = taken.FirstOrDefault(seat => time.GetElapsedTime(seat.Since) is var waited && waited >= Least && waited <= Most);
            if (freed is null)
            {
                return false;
            }

            taken.Remove(freed);
            // Within the lock: the call may have its place by now, and end with its seat.
            freed.Free();
        }

        return true;
    }

    /// <summary>The seat of a call that waits.</summary>
    /// <param name="seats">All seats.</param>
    /// <param name="since">When it was taken.</param>
    /// <param name="cancel">The end of the call.</param>
    internal sealed class Seat(WaitingSeats seats, long since, CancellationToken cancel) : IDisposable
    {
        private readonly CancellationTokenSource end = CancellationTokenSource.CreateLinkedTokenSource(cancel);

        /// <summary>When it was taken, by the clock's own count.</summary>
        public long Since => since;

        /// <summary>Whether it was given to another.</summary>
        public bool IsFreed { get; private set; }

        /// <summary>Ends the wait: the call ended, or the seat is another's.</summary>
        public CancellationToken Token => end.Token;

        /// <summary>Ends the wait for another.</summary>
        public void Free()
        {
            IsFreed = true;
            end.Cancel();
        }

        /// <inheritdoc/>
        public void Dispose()
        {
            lock (seats.door)
            {
                seats.taken.Remove(this);
            }

            end.Dispose();
        }
    }
}
