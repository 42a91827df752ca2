using System.Data;
using Dapper;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Jobs;

/// <summary>Jobs and what became of their items. Many processes may work on one: <see cref="Shards"/>.</summary>
public sealed class JobRecords
{
    internal const string Columns =
        "id AS Id, display_name AS DisplayName, document AS Document, state AS State, items AS Items, is_counted AS IsCounted, done AS Done, failed AS Failed, created AS Created, ended AS Ended";

    private readonly Database database;

    private ShardRecords? shards;

    internal JobRecords(Database database) => this.database = database;

    /// <summary>The parts of jobs, and who works on them.</summary>
    public ShardRecords Shards => shards ??= new ShardRecords(database);

    /// <summary>A job; null where there is none.</summary>
    public StoredJob? Find(string id) => !database.Exists ? null : database.Read((connection, transaction) => Find(id, connection, transaction));

    /// <summary>A page of jobs, the newest first.</summary>
    /// <param name="before">Id of the job that the page before ended with; null for the first page.</param>
    /// <param name="most">Most jobs on it.</param>
    public IReadOnlyList<StoredJob> List(string? before, int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<StoredJob>(
        $"""
        SELECT {Columns} FROM jobs
        WHERE @before = '' OR created < (SELECT created FROM jobs WHERE id = @before) OR (created = (SELECT created FROM jobs WHERE id = @before) AND id < @before)
        ORDER BY created DESC, id DESC LIMIT @most
        """,
        new { before = before ?? string.Empty, most },
        transaction).AsList());

    /// <summary>Writes a new job down; its first shard counts its first items. The same request again gives the job that it made,
    /// and one that was done for something else a job without an id.</summary>
    /// <param name="job">The job.</param>
    /// <param name="counting">What its first shard is to count.</param>
    /// <param name="request">The request.</param>
    public Task<StoredJob> CreateAsync(StoredJob job, string counting, WriteRequest request) => database.WriteAsync((connection, transaction) =>
    {
        if (DoneRequests.Find(request, connection, transaction) is { } done)
        {
            return (false, (done.Fingerprint == request.Fingerprint ? Find(done.Name, connection, transaction) : null) ?? job with { Id = string.Empty });
        }

        connection.Execute(
            """
            INSERT INTO jobs (id, display_name, document, state, shards, open_shards, is_counted, items, done, failed, turn, created, ended)
            VALUES (@Id, @DisplayName, @Document, @State, 0, 0, 0, 0, 0, 0, 0, @Created, NULL)
            """,
            job,
            transaction);
        ShardRecords.Add(job.Id, ShardKind.Counting, counting, 0, connection, transaction);
        DoneRequests.Remember(request, job.Id, connection, transaction);
        return (true, job);
    });

    /// <summary>Tells a job to go on, to wait, or that it is given up. One that has ended stays as it is.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="state">Where it is to stand.</param>
    /// <param name="at">When (RFC 3339).</param>
    /// <returns>The job as it stands now; null where there is none.</returns>
    public Task<StoredJob?> TellAsync(string id, string state, string at) => database.WriteAsync((connection, transaction) =>
    {
        var isChanged = connection.Execute(
            $"""
            UPDATE jobs SET state = @state, ended = CASE WHEN @state = '{JobState.Cancelled}' THEN @at ELSE NULL END
            WHERE id = @id AND state <> @state AND state NOT IN ('{JobState.Done}', '{JobState.Cancelled}')
            """,
            new { id, state, at },
            transaction) > 0;
        return (isChanged, Find(id, connection, transaction));
    });

    /// <summary>Results of a job, in the order in which they were written: none ever comes in before one that was read.</summary>
    /// <param name="id">Id of the job.</param>
    /// <param name="after">Only those behind this place.</param>
    /// <param name="most">Most results.</param>
    public IReadOnlyList<StoredResult> Results(string id, long after, int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<StoredResult>(
        "SELECT item AS Item, place AS Place, document AS Document FROM job_results WHERE job = @id AND place > @after ORDER BY place LIMIT @most", new { id, after, most }, transaction).AsList());

    internal static StoredJob? Find(string id, IDbConnection connection, IDbTransaction transaction) =>
        connection.QuerySingleOrDefault<StoredJob>($"SELECT {Columns} FROM jobs WHERE id = @id", new { id }, transaction);
}
