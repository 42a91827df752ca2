using Grpc.Core;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Service.Solves;

/// <summary>Runs solves, as many at once as there are processors. A solve is a blocking native call, so each has a thread
/// of its own and none is taken from the pool that serves the network.</summary>
internal sealed class SolveRoom(TimeProvider time) : IDisposable
{
    /// <summary>Most time that a call may take, however late its deadline is.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    /// <summary>Share of the caller's time that is solved in; the rest is for reading, writing and the way back.</summary>
    private const double ShareForSolving = 0.85;

    private readonly SemaphoreSlim places = new(Environment.ProcessorCount);

    /// <summary>Runs a solve within the call's deadline.</summary>
    /// <param name="context">The call.</param>
    /// <param name="solve">The solve: it is given its time and its cancellation.</param>
    public async Task<T> Run<T>(ServerCallContext context, Func<Deadline, CancellationToken, T> solve)
    {
        var cancel = context.CancellationToken;
        await places.WaitAsync(cancel);
        try
        {
            var now = time.GetUtcNow();
            var left = context.Deadline == DateTime.MaxValue ? Longest : new DateTimeOffset(context.Deadline) - now;
            var clock = new Deadline(time, now + ((left < Longest ? left : Longest) * ShareForSolving));
            return await Task.Factory.StartNew(
                () => solve(clock, cancel), cancel, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        }
        finally
        {
            places.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => places.Dispose();
}
