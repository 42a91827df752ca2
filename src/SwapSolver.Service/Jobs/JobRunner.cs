using SwapSolver.Records;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Jobs;

/// <summary>Works on the kitchen's jobs, beside all other processes that share its records. A service on the network does so
/// always; one that a console started for a call, while its caller watches.</summary>
internal sealed partial class JobRunner(
    ServiceOptions options, KitchenRecords records, IServiceScopeFactory scopes, SolveRoom room, ServiceLimits limits, TimeProvider time, ILogger<JobRunner> logger) : BackgroundService
{
    /// <summary>Jobs that another process began are seen after so long.</summary>
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(2);

    private readonly string holder = $"{Environment.MachineName}/{Environment.ProcessId}";

    private readonly SemaphoreSlim news = new(0);

    private readonly Lock running = new();

    private readonly SortedDictionary<int, (ShardRun Run, Task Ended)> shards = [];

    private int watchers;

    private int Places => limits.JobSolvesAtOnce == 0 ? limits.Solves : limits.JobSolvesAtOnce;

    private bool IsAtWork => options.EmbeddedSocket is null || Volatile.Read(ref watchers) > 0;

    /// <summary>Looks for work now, as a job was begun or told to go on.</summary>
    public void Look() => news.Release();

    /// <summary>Works while the result is not disposed of, where it would not anyway.</summary>
    public IDisposable Attend()
    {
        Interlocked.Increment(ref watchers);
        Look();
        return new Attendance(this);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            // Not before the service answers: its start is not to wait for a job.
            for (var isFirst = true; ; isFirst = false)
            {
                await news.WaitAsync(LookEvery, stoppingToken);
                if (IsAtWork)
                {
                    Fill(isFirst);
                }
            }
        }
        catch (OperationCanceledException)
        {
            await EndAsync();
        }
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        base.Dispose();
        news.Dispose();
    }

    /// <summary>Takes a shard for every place that is free.</summary>
    private void Fill(bool tellAll)
    {
        lock (running)
        {
            try
            {
                while (Enumerable.Range(0, Places).FirstOrDefault(place => !shards.ContainsKey(place), -1) is >= 0 and var free
                    && records.Jobs.Shards.Take(holder, TimeSpan.FromSeconds(limits.JobLeaseSeconds)) is { } shard)
                {
                    Begin(shard, free);
                }
            }
            catch (RecordsFaultException fault)
            {
                // Calls are told so too; here once in a while is enough.
                if (tellAll)
                {
                    CannotLook(logger, fault.Message);
                }
            }
        }
    }

    private void Begin(HeldShard shard, int place)
    {
        var run = new ShardRun(shard, place, records, scopes, room, limits, time, logger);
        // A solve is a blocking call: it has a thread of its own, and none of those that serve the network.
        var ended = Task.Factory.StartNew(run.Run, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        shards[place] = (run, ended);
        _ = ended.ContinueWith(
            _ =>
            {
                lock (running)
                {
                    shards.Remove(place);
                }

                run.Dispose();
                Look();
            },
            TaskScheduler.Default);
    }

    /// <summary>Writes what is done and gives the rest back, so that another process goes on with it at once.</summary>
    private async Task EndAsync()
    {
        List<Task> ends;
        lock (running)
        {
            foreach (var (run, _) in shards.Values)
            {
                run.Stop();
            }

            ends = [.. shards.Values.Select(shard => shard.Ended)];
        }

        await Task.WhenAll(ends).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    [LoggerMessage(EventId = 7, Level = LogLevel.Warning, Message = "jobs cannot be looked for: {Reason}")]
    private static partial void CannotLook(ILogger logger, string reason);

    private sealed class Attendance(JobRunner runner) : IDisposable
    {
        private int isOver;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref isOver, 1) == 0)
            {
                Interlocked.Decrement(ref runner.watchers);
            }
        }
    }
}
