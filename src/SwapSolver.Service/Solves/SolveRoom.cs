using System.Threading.Channels;
using System.Threading.RateLimiting;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Limits;
using SwapSolver.Solving.Answers;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Solves;

/// <summary>Runs solves, a few at once and a few that wait; who comes beyond them is told so at once, most of them unread (<see cref="Doorstep"/>). A solve is a blocking
/// native call, so it has one of the threads that are there for it and none is taken from the pool that serves the network.</summary>
internal sealed class SolveRoom : IDisposable
{
    private static readonly object Slot = new();

    /// <summary>When a place is likely to be free again: a question takes some tenths of a second.</summary>
    private static readonly TimeSpan FreeAgain = TimeSpan.FromSeconds(1);

    /// <summary>Pieces that a search may be ahead of its reader.</summary>
    private const int FoundAhead = 8;

    /// <summary>Share of the caller's time that is solved in; the rest is for reading, writing and the way back.</summary>
    private const double ShareForSolving = 0.85;

    private readonly TimeProvider time;

    private readonly ServiceLimits limits;

    private readonly ConcurrencyLimiter places;

    /// <summary>Searches that go on for minutes leave a place for short questions.</summary>
    private readonly ConcurrencyLimiter streams;

    private readonly Doorstep door;

    private readonly SolveThreads threads;

    /// <summary>Opens it.</summary>
    /// <param name="time">The clock.</param>
    /// <param name="limits">How many solve at once, how many wait and for how long one may solve.</param>
    public SolveRoom(TimeProvider time, ServiceLimits limits)
    {
        (this.time, this.limits) = (time, limits);
        (places, streams) = (Places(limits.Solves, limits.Waiting), Places(Math.Max(1, limits.Solves / 2), limits.Waiting));
        (door, threads) = (new Doorstep(time, places, limits.Waiting), new SolveThreads(limits.Solves));
    }

    /// <summary>Solves that run now.</summary>
    public int Running => limits.Solves - (int)(places.GetStatistics()?.CurrentAvailablePermits ?? limits.Solves);

    /// <summary>Calls that wait for one.</summary>
    public int Waiting => WaitingInside + door.Waiting;

    /// <summary>Those of them that were let in and read.</summary>
    public int WaitingInside => (int)(places.GetStatistics()?.CurrentQueuedCount ?? 0);

    /// <summary>Whether whoever comes now is turned away.</summary>
    public bool IsFull => places.GetStatistics() is { CurrentAvailablePermits: 0 } now && now.CurrentQueuedCount + door.Waiting >= limits.Waiting;

    /// <summary>Comes to the door with a call that needs a place and was not read: false for who is turned away.</summary>
    /// <param name="context">The call.</param>
    /// <param name="answer">What reads it and answers.</param>
    /// <exception cref="OperationCanceledException">The caller left.</exception>
    public async Task<bool> TryEnter(HttpContext context, Func<Task> answer)
    {
        using var pass = await door.Come(context.RequestAborted);
        if (pass is not null)
        {
            context.Items[Slot] = pass;
            await answer();
        }

        return pass is not null;
    }

    /// <summary>Whether a call was let in at the door.</summary>
    /// <param name="context">The call.</param>
    public static bool WasLetIn(HttpContext context) => context.Items.ContainsKey(Slot);

    /// <summary>What is said to who is turned away.</summary>
    public static RpcException Busy() =>
        RichFault.Later(Code.ResourceExhausted, Reason.Busy, "all places for solving are taken, and as many calls wait as may; ask again a little later", FreeAgain);

    /// <summary>Runs a solve within the call's deadline.</summary>
    /// <param name="context">The call.</param>
    /// <param name="solve">The solve: it is given its time and its cancellation.</param>
    /// <exception cref="RpcException">RESOURCE_EXHAUSTED where as many calls wait as may.</exception>
    public Task<T> Run<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve) =>
        Run(context, solve, TimeSpan.FromSeconds(limits.CallSeconds));

    /// <summary>Runs a solve that may take as long as one that answers piece by piece.</summary>
    /// <param name="context">The call.</param>
    /// <param name="solve">The solve: it is given its time and its cancellation.</param>
    /// <exception cref="RpcException">RESOURCE_EXHAUSTED where as many calls wait as may.</exception>
    public async Task<T> RunLong<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve)
    {
        using var turn = await streams.AcquireAsync(1, context.CancellationToken);
        ThrowIfBusy(turn);
        return await Run(context, solve, TimeSpan.FromSeconds(limits.StreamSeconds));
    }

    private async Task<T> Run<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve, TimeSpan longest)
    {
        var cancel = context.CancellationToken;
        var wait = places.AcquireAsync(1, cancel);
        (context.GetHttpContext().Items[Slot] as Doorstep.Pass)?.Dispose();
        var place = await wait;
        ThrowIfBusy(place);
        var now = time.GetUtcNow();
        var left = context.Deadline == DateTime.MaxValue ? longest : new DateTimeOffset(context.Deadline) - now;
        var clock = new Deadline(time, now + ((left < longest ? left : longest) * ShareForSolving));
        // The place is given on by the thread that solved, as its last act: whoever waits need not wait for the pool as well.
        return await Task.Factory.StartNew(
            () =>
            {
                try
                {
                    cancel.ThrowIfCancellationRequested();
                    return solve(clock, cancel);
                }
                finally
                {
                    place.Dispose();
                    door.LetIn();
                }
            },
            CancellationToken.None,
            TaskCreationOptions.DenyChildAttach | TaskCreationOptions.HideScheduler,
            threads);
    }

    /// <summary>Runs a search that gives what it finds piece by piece, and sends each piece at once.</summary>
    /// <param name="context">The call.</param>
    /// <param name="trace">The search: it is given its time and its cancellation.</param>
    /// <param name="pieces">Where the pieces go.</param>
    /// <exception cref="RpcException">DEADLINE_EXCEEDED where the time ran out with nothing found; RESOURCE_EXHAUSTED where as many
    /// calls wait as may.</exception>
    public async Task Stream<T>(
        ServerCallContext context, Func<Deadline, CancellationToken, IEnumerable<T>> trace, IAsyncStreamWriter<T> pieces)
    {
        using var turn = await streams.AcquireAsync(1, context.CancellationToken);
        ThrowIfBusy(turn);
        // A reader that is slow holds the search up a little; one that is gone ends it.
        var found = Channel.CreateBounded<T>(FoundAhead);
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.CancellationToken);
        var search = Run(
            context,
            (clock, _) =>
            {
                try
                {
                    var count = 0;
                    foreach (var piece in trace(clock, gone.Token))
                    {
                        gone.Token.ThrowIfCancellationRequested();
                        found.Writer.WriteAsync(piece, gone.Token).AsTask().GetAwaiter().GetResult();
                        count++;
                    }

                    return count > 0 || !clock.IsOver;
                }
                finally
                {
                    found.Writer.TryComplete();
                }
            },
            TimeSpan.FromSeconds(limits.StreamSeconds));
        // A search that was never begun has nothing to give either.
        _ = search.ContinueWith(
            static (_, writer) => ((ChannelWriter<T>)writer!).TryComplete(), found.Writer, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
        try
        {
            await foreach (var piece in found.Reader.ReadAllAsync(gone.Token))
            {
                await pieces.WriteAsync(piece, gone.Token);
            }
        }
        catch
        {
            await gone.CancelAsync();
            throw;
        }

        OutOfTime.ThrowIf(!await search);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        threads.Dispose();
        places.Dispose();
        streams.Dispose();
    }

    private static ConcurrencyLimiter Places(int count, int waiting) => new(new ConcurrencyLimiterOptions
    {
        PermitLimit = count,
        QueueLimit = waiting,
        QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
    });

    private static void ThrowIfBusy(RateLimitLease lease)
    {
        if (!lease.IsAcquired)
        {
            throw Busy();
        }
    }
}
