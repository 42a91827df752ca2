using System.Data;
using Dapper;
using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Jobs;

/// <summary>Who works on which part of a job. A process takes a shard for a while and says again and again that it lives; where
/// it falls silent another takes the shard, and the first one's fence no longer fits. What an item came to is written in the
/// transaction that moves its shard on, under the item's own key: it is there once, whoever dies when. Time is the database's own,
/// so that it is the same for all.</summary>
public sealed class ShardRecords
{
    private const string Waiting = "WAITING", Held = "HELD", Done = "DONE";

    private readonly Database database;

    internal ShardRecords(Database database) => this.database = database;

    private string IsFree => $"(s.state = '{Waiting}' OR (s.state = '{Held}' AND s.held_until < {database.Milliseconds}))";

    /// <summary>Takes a shard of a running job; null where none is to be had. Jobs take turns.</summary>
    /// <param name="holder">Who takes it, for people to read.</param>
    /// <param name="lease">For how long it is taken.</param>
    public HeldShard? Take(string holder, TimeSpan lease)
    {
        // Looked for before the writers' turn is taken: an idle process holds nobody up.
        if (!database.Exists || database.Read((connection, transaction) => Next(connection, transaction)) is null)
        {
            return null;
        }

        return database.Write<HeldShard?>((connection, transaction) =>
        {
            if (Next(connection, transaction) is not { } job)
            {
                return (false, null);
            }

            var number = connection.ExecuteScalar<long>($"SELECT s.number FROM job_shards s WHERE s.job = @job AND s.state <> '{Done}' AND {IsFree} ORDER BY s.number LIMIT 1", new { job }, transaction);
            connection.Execute(
                $"""
                UPDATE job_shards SET state = '{Held}', fence = fence + 1, attempts = attempts + 1, holder = @holder, held_until = {database.Milliseconds} + @lease
                WHERE job = @job AND number = @number
                """,
                new { job, number, holder, lease = (long)lease.TotalMilliseconds },
                transaction);
            connection.Execute("UPDATE jobs SET turn = (SELECT MAX(turn) + 1 FROM jobs) WHERE id = @job", new { job }, transaction);
            return (true, connection.QuerySingle<HeldShard>(
                """
                SELECT s.job AS Job, s.number AS Number, s.kind AS Kind, s.document AS Document, j.document AS JobDocument,
                       s.first_item AS FirstItem, s.items AS Items, s.written AS Written, s.fence AS Fence, s.attempts AS Attempts
                FROM job_shards s JOIN jobs j ON j.id = s.job WHERE s.job = @job AND s.number = @number
                """,
                new { job, number },
                transaction));
        });
    }

    /// <summary>Says that the holder lives.</summary>
    /// <param name="shard">The shard.</param>
    /// <param name="lease">For how long it is taken from now on.</param>
    public Hold Renew(HeldShard shard, TimeSpan lease) => database.Write((connection, transaction) =>
    {
        var state = Keep(shard, 0, lease, connection, transaction);
        return (state != Hold.Lost, state);
    });

    /// <summary>Writes what became of the shard's next items. The last of them ends the shard, and the last shard its job.</summary>
    /// <param name="shard">The shard as it was taken or written last.</param>
    /// <param name="results">The results, in the order of the items.</param>
    /// <param name="lease">For how long it is taken from now on.</param>
    /// <param name="at">Now (RFC 3339).</param>
    public Hold Write(HeldShard shard, IReadOnlyList<NewResult> results, TimeSpan lease, string at) => database.Write((connection, transaction) =>
    {
        var state = Keep(shard, results.Count, lease, connection, transaction);
        if (state == Hold.Lost)
        {
            return (false, state);
        }

        var before = connection.ExecuteScalar<long>("SELECT done FROM jobs WHERE id = @Job", shard, transaction);
        var written = connection.Execute(
            "INSERT INTO job_results (job, item, place, failed, document) VALUES (@job, @item, @place, @failed, @document) ON CONFLICT (job, item) DO NOTHING",
            results.Select((result, index) => new
            {
                job = shard.Job,
                item = shard.FirstItem + shard.Written + index,
                place = before + index + 1,
                failed = result.IsFailed ? 1 : 0,
                document = result.Document,
            }),
            transaction);
        if (written != results.Count)
        {
            // Cannot be while fences hold; were it so, nothing would be counted twice.
            return (false, Hold.Lost);
        }

        connection.Execute(
            "UPDATE jobs SET done = done + @count, failed = failed + @failed WHERE id = @job",
            new { job = shard.Job, count = results.Count, failed = results.Count(result => result.IsFailed) },
            transaction);
        if (shard.Written + results.Count == shard.Items)
        {
            End(shard, at, connection, transaction);
        }

        return (true, state);
    });

    /// <summary>Ends a shard that counted: what it found is to be worked on, and where there may be more, another goes on counting.</summary>
    /// <param name="shard">The shard.</param>
    /// <param name="found">The shards that it found.</param>
    /// <param name="further">What is to be counted next; null where everything is.</param>
    /// <param name="at">Now (RFC 3339).</param>
    public Hold Count(HeldShard shard, IReadOnlyList<NewShard> found, string? further, string at) => database.Write((connection, transaction) =>
    {
        var state = Keep(shard, 0, TimeSpan.Zero, connection, transaction);
        if (state == Hold.Lost)
        {
            return (false, state);
        }

        foreach (var one in found)
        {
            Add(shard.Job, ShardKind.Items, one.Document, one.Items, connection, transaction);
        }

        if (further is not null)
        {
            Add(shard.Job, ShardKind.Counting, further, 0, connection, transaction);
        }
        else
        {
            connection.Execute("UPDATE jobs SET is_counted = 1 WHERE id = @Job", shard, transaction);
        }

        End(shard, at, connection, transaction);
        return (true, state);
    });

    /// <summary>Gives a shard back, so that another may go on with it at once. It was no attempt that failed.</summary>
    public void GiveBack(HeldShard shard) => database.Write((connection, transaction) => (true, connection.Execute(
        $"UPDATE job_shards SET state = '{Waiting}', attempts = CASE WHEN attempts > 0 THEN attempts - 1 ELSE 0 END WHERE job = @Job AND number = @Number AND fence = @Fence AND state = '{Held}'", shard, transaction)));

    internal static void Add(string job, string kind, string document, int items, IDbConnection connection, IDbTransaction transaction)
    {
        connection.Execute(
            $"""
            INSERT INTO job_shards (job, number, kind, document, first_item, items, written, state, fence, attempts, holder, held_until)
            SELECT id, shards + 1, @kind, @document, items + 1, @items, 0, '{Waiting}', 0, 0, '', 0 FROM jobs WHERE id = @job
            """,
            new { job, kind, document, items },
            transaction);
        connection.Execute("UPDATE jobs SET shards = shards + 1, open_shards = open_shards + 1, items = items + @items WHERE id = @job", new { job, items }, transaction);
    }

    /// <summary>The running job whose turn it is among those with a shard to be had.</summary>
    private string? Next(IDbConnection connection, IDbTransaction transaction) => connection.QueryFirstOrDefault<string>(
        $"""
        SELECT j.id FROM jobs j WHERE j.state = '{JobState.Running}' AND EXISTS (SELECT 1 FROM job_shards s WHERE s.job = j.id AND s.state <> '{Done}' AND {IsFree})
        ORDER BY j.turn, j.id LIMIT 1
        """,
        transaction: transaction);

    private Hold Keep(HeldShard shard, int written, TimeSpan lease, IDbConnection connection, IDbTransaction transaction)
    {
        var state = connection.ExecuteScalar<string>("SELECT state FROM jobs WHERE id = @Job", shard, transaction);
        var isHeld = state is JobState.Running or JobState.Paused && connection.Execute(
            $"""
            UPDATE job_shards SET held_until = {database.Milliseconds} + @lease, written = written + @written, attempts = CASE WHEN @written > 0 THEN 0 ELSE attempts END
            WHERE job = @job AND number = @number AND fence = @fence AND state = '{Held}' AND written = @before
            """,
            new { job = shard.Job, number = shard.Number, fence = shard.Fence, before = shard.Written, written, lease = (long)lease.TotalMilliseconds },
            transaction) == 1;
        return !isHeld ? Hold.Lost : state == JobState.Running ? Hold.Kept : Hold.Stopped;
    }

    private static void End(HeldShard shard, string at, IDbConnection connection, IDbTransaction transaction)
    {
        connection.Execute($"UPDATE job_shards SET state = '{Done}' WHERE job = @Job AND number = @Number", shard, transaction);
        connection.Execute(
            $"""
            UPDATE jobs SET open_shards = open_shards - 1,
                            state = CASE WHEN open_shards = 1 THEN '{JobState.Done}' ELSE state END,
                            ended = CASE WHEN open_shards = 1 THEN @at ELSE ended END
            WHERE id = @job
            """,
            new { job = shard.Job, at },
            transaction);
    }
}
