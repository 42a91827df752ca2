using System.Collections.Concurrent;

namespace SwapSolver.Service.Solves;

/// <summary>Threads that only solve, as many as may solve at once. They come into being with the first solve and stay: to make one for every
/// solve takes as long as a small solve does.</summary>
/// <param name="count">How many there are, 1 and more.</param>
internal sealed class SolveThreads(int count) : TaskScheduler, IDisposable
{
    private readonly BlockingCollection<Task> waiting = [];

    private int begun;

    /// <inheritdoc/>
    public override int MaximumConcurrencyLevel => count;

    /// <inheritdoc/>
    public void Dispose() => waiting.CompleteAdding();

    /// <inheritdoc/>
    protected override void QueueTask(Task task)
    {
        waiting.Add(task);
        if (Interlocked.Exchange(ref begun, 1) == 0)
        {
            for (var number = 1; number <= count; number++)
            {
                new Thread(Solve) { IsBackground = true, Name = $"solve {number}" }.Start();
            }
        }
    }

    /// <inheritdoc/>
    /// <remarks>Never: whoever waits for a solve serves the network.</remarks>
    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => false;

    /// <inheritdoc/>
    protected override IEnumerable<Task> GetScheduledTasks() => [.. waiting];

    private void Solve()
    {
        foreach (var task in waiting.GetConsumingEnumerable())
        {
            TryExecuteTask(task);
        }
    }
}
