using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Watching;
using SwapSolver.Solving.Answers;
using SwapSolver.V1;

namespace SwapSolver.Service.Jobs;

/// <summary>Works on one shard that this process took, on a thread of its own: solves an item after another, writes what is done
/// every few seconds, and says meanwhile that it lives.</summary>
/// <param name="taken">The shard.</param>
/// <param name="turn">Which of the places for jobs this is, from 0: all but the first make way for callers.</param>
/// <param name="records">Holds the shard.</param>
/// <param name="scopes">Opens the kitchen.</param>
/// <param name="room">Says whether callers wait.</param>
/// <param name="limits">How long a shard is held, and how long an item may take.</param>
/// <param name="time">The clock.</param>
/// <param name="logger">Told of what goes wrong.</param>
internal sealed partial class ShardRun(
    HeldShard taken, int turn, KitchenRecords records, IServiceScopeFactory scopes, SolveRoom room, ServiceLimits limits, TimeProvider time, ILogger logger) : IDisposable
{
    /// <summary>Name under which its solves are counted.</summary>
    private const string Question = "CatalogueJob";

    /// <summary>Processes that died on an item before it is given up as what kills them.</summary>
    private const int MostAttempts = 5;

    private static readonly TimeSpan WriteEvery = TimeSpan.FromSeconds(2), AskAgain = TimeSpan.FromSeconds(1), MakeWay = TimeSpan.FromMilliseconds(20);

    private readonly CancellationTokenSource stopping = new();

    private readonly Lock writing = new();

    private HeldShard shard = taken;

    private TimeSpan Lease => TimeSpan.FromSeconds(limits.JobLeaseSeconds);

    /// <summary>Begins nothing more: what is done is written, and the rest given back.</summary>
    public void Stop() => stopping.Cancel();

    /// <summary>Works until the shard is done, lost or stopped.</summary>
    public void Run()
    {
        CallMeter.Question.Value = Question;
        using var life = time.CreateTimer(_ => SayThatItLives(), null, Lease / 3, Lease / 3);
        try
        {
            if (shard.Kind == ShardKind.Counting)
            {
                Count();
            }
            else
            {
                Solve();
            }
        }
        catch (OperationCanceledException)
        {
            // Told to stop.
        }
        catch (RecordsFaultException fault)
        {
            RecordsAway(logger, shard.Job, fault.Message);
        }
        catch (Exception fault)
        {
            ShardFailed(logger, shard.Job, shard.Number, fault);
            // Left as it is until its time is over: the next attempt counts, so that it ends some day.
            return;
        }

        GiveBack();
    }

    /// <inheritdoc/>
    public void Dispose() => stopping.Dispose();

    private void Count()
    {
        using var scope = scopes.CreateScope();
        scope.ServiceProvider.GetRequiredService<Access.Caller>().Role = Access.Role.Reader;
        var counting = new CatalogueCount(scope.ServiceProvider.GetRequiredService<FormulaLibrary>(), scopes);
        var (found, further) = counting.Next(JobDocument.ReadCatalogue(shard.JobDocument), shard.Document);
        Persist(() => records.Jobs.Shards.Count(shard, found, further, Moment.Write(time.GetUtcNow())));
    }

    private void Solve()
    {
        var part = CatalogueShard.Read(shard.Document);
        using var solve = new CatalogueSolve(scopes, part.Formula);
        var done = new List<NewResult>();
        var written = time.GetTimestamp();
        // Where a process died on this shard, each item is written by itself, so that the one that kills is known.
        var isCareful = shard.Attempts > 1;
        while (shard.Written + done.Count < shard.Items && !stopping.IsCancellationRequested)
        {
            var item = CatalogueItem.Read(part.Items[(int)shard.Written + done.Count]);
            if (shard.Attempts > MostAttempts)
            {
                var given = item.Named(part.Formula);
                given.Problem = $"given up: {MostAttempts} times the process that was at it ended; ask about it by itself";
                done.Add(new NewResult(true, JobDocument.Write(given)));
            }
            else
            {
                WaitForItsTurn();
                if (Answered(solve, item, part.Formula) is not { } answered)
                {
                    break;
                }

                done.Add(answered);
            }

            if (isCareful || time.GetElapsedTime(written) >= WriteEvery || shard.Written + done.Count == shard.Items)
            {
                Write(done);
                written = time.GetTimestamp();
            }
        }

        Write(done);
    }

    /// <summary>What became of an item; null where it was stopped before that.</summary>
    private NewResult? Answered(CatalogueSolve solve, CatalogueItem item, string formula)
    {
        JobItem answer;
        try
        {
            answer = solve.Answer(item, new Deadline(time, time.GetUtcNow() + TimeSpan.FromSeconds(limits.CallSeconds)), stopping.Token);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
        catch (RpcException fault)
        {
            answer = item.Named(formula);
            answer.Problem = fault.Status.Detail;
        }
        catch (Exception fault) when (fault is not RecordsFaultException)
        {
            ItemFailed(logger, shard.Job, shard.FirstItem + shard.Written, fault);
            answer = item.Named(formula);
            answer.Problem = "a fault of the service; it has been logged";
        }

        // A solve that was stopped may have given what it had by then.
        return stopping.IsCancellationRequested ? null : new NewResult(answer.Problem.Length > 0, JobDocument.Write(answer));
    }

    /// <summary>Callers who wait go first; one place of the jobs goes on, so that no job stands still.</summary>
    private void WaitForItsTurn()
    {
        while (turn > 0 && room.Running > 0 && room.Running + turn >= limits.Solves && !stopping.Token.WaitHandle.WaitOne(MakeWay))
        {
        }
    }

    private void Write(List<NewResult> done)
    {
        if (done.Count == 0)
        {
            return;
        }

        Persist(() =>
        {
            var hold = records.Jobs.Shards.Write(shard, done, Lease, Moment.Write(time.GetUtcNow()));
            shard = shard with { Written = shard.Written + (hold == Hold.Lost ? 0 : done.Count), Attempts = 0 };
            return hold;
        });
        done.Clear();
    }

    /// <summary>Writes, and where the records cannot be reached waits until they can: nothing more is solved meanwhile, so
    /// that memory stays as it is. Whoever took the shard over in that time goes on with it.</summary>
    private void Persist(Func<Hold> write)
    {
        for (var isTold = false; ;)
        {
            try
            {
                lock (writing)
                {
                    if (write() != Hold.Kept)
                    {
                        stopping.Cancel();
                    }
                }

                return;
            }
            catch (RecordsFaultException fault) when (!fault.IsContradiction)
            {
                if (!isTold)
                {
                    RecordsAway(logger, shard.Job, fault.Message);
                    isTold = true;
                }

                stopping.Token.WaitHandle.WaitOne(AskAgain);
                stopping.Token.ThrowIfCancellationRequested();
            }
        }
    }

    private void SayThatItLives()
    {
        if (!writing.TryEnter())
        {
            // What is being written says so too.
            return;
        }

        try
        {
            if (records.Jobs.Shards.Renew(shard, Lease) != Hold.Kept)
            {
                stopping.Cancel();
            }
        }
        catch (Exception fault) when (fault is RecordsFaultException or ObjectDisposedException)
        {
            // The next try may reach them; else another process takes the shard.
        }
        finally
        {
            writing.Exit();
        }
    }

    private void GiveBack()
    {
        try
        {
            lock (writing)
            {
                records.Jobs.Shards.GiveBack(shard);
            }
        }
        catch (RecordsFaultException)
        {
            // It is free when its time is over.
        }
    }

    [LoggerMessage(EventId = 4, Level = LogLevel.Error, Message = "job {Job}: shard {Number} failed")]
    private static partial void ShardFailed(ILogger logger, string job, long number, Exception fault);

    [LoggerMessage(EventId = 5, Level = LogLevel.Error, Message = "job {Job}: item {Item} or one of the next failed")]
    private static partial void ItemFailed(ILogger logger, string job, long item, Exception fault);

    [LoggerMessage(EventId = 6, Level = LogLevel.Warning, Message = "job {Job} waits to write: {Reason}")]
    private static partial void RecordsAway(ILogger logger, string job, string reason);
}
