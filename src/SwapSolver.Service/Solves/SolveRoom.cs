using System.Threading.Channels;
using Grpc.Core;
using SwapSolver.Service.Services;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Service.Solves;

/// <summary>Runs solves, as many at once as there are processors. A solve is a blocking native call, so each has a thread
/// of its own and none is taken from the pool that serves the network.</summary>
internal sealed class SolveRoom(TimeProvider time) : IDisposable
{
    /// <summary>Most time that a call may take, however late its deadline is.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    /// <summary>The same for a call that gives what it finds piece by piece.</summary>
    private static readonly TimeSpan LongestStream = TimeSpan.FromMinutes(5);

    /// <summary>Pieces that a search may be ahead of its reader.</summary>
    private const int FoundAhead = 8;

    /// <summary>Share of the caller's time that is solved in; the rest is for reading, writing and the way back.</summary>
    private const double ShareForSolving = 0.85;

    private readonly SemaphoreSlim places = new(Environment.ProcessorCount);

    /// <summary>Runs a solve within the call's deadline.</summary>
    /// <param name="context">The call.</param>
    /// <param name="solve">The solve: it is given its time and its cancellation.</param>
    public Task<T> Run<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve) => Run(context, solve, Longest);

    /// <summary>Runs a solve that may take as long as one that answers piece by piece.</summary>
    /// <param name="context">The call.</param>
    /// <param name="solve">The solve: it is given its time and its cancellation.</param>
    public Task<T> RunLong<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve) => Run(context, solve, LongestStream);

    private async Task<T> Run<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve, TimeSpan longest)
    {
        var cancel = context.CancellationToken;
        await places.WaitAsync(cancel);
        try
        {
            var now = time.GetUtcNow();
            var left = context.Deadline == DateTime.MaxValue ? longest : new DateTimeOffset(context.Deadline) - now;
            var clock = new Deadline(time, now + ((left < longest ? left : longest) * ShareForSolving));
            return await Task.Factory.StartNew(
                () => solve(clock, cancel), cancel, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        }
        finally
        {
            places.Release();
        }
    }

    /// <summary>Runs a search that gives what it finds piece by piece, and sends each piece at once.</summary>
    /// <param name="context">The call.</param>
    /// <param name="trace">The search: it is given its time and its cancellation.</param>
    /// <param name="pieces">Where the pieces go.</param>
    /// <exception cref="RpcException">DEADLINE_EXCEEDED where the time ran out with nothing found.</exception>
    public async Task Stream<T>(
        ServerCallContext context, Func<Deadline, CancellationToken, IEnumerable<T>> trace, IAsyncStreamWriter<T> pieces)
    {
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
                    found.Writer.Complete();
                }
            },
            LongestStream);
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
    public void Dispose() => places.Dispose();
}
