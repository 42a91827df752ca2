using System.Data;
using System.Data.Common;
using Dapper;
using DbUp;
using DbUp.Builder;
using Microsoft.Data.Sqlite;

namespace SwapSolver.Records.Storage;

/// <summary>One embedded database file. It comes into being with the first write: a kitchen without records has no file.</summary>
/// <param name="path">The file.</param>
internal sealed class SqliteDatabase(string path) : Database
{
    /// <summary>Name of the file in the folder of the records.</summary>
    public const string FileName = "kitchen.db";

    /// <summary>How long a writer waits for another program [s].</summary>
    private const int MostWaitSeconds = 60;

    /// <summary>Result codes of SQLite (sqlite.org/rescode.html).</summary>
    private const int Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13, CannotOpen = 14, Constraint = 19, NotADatabase = 26;

    private readonly Lock watching = new();

    private WriteWatch? watch;

    private int watches;

    /// <inheritdoc/>
    public override string Place => path;

    /// <inheritdoc/>
    public override bool Exists => File.Exists(path);

    /// <inheritdoc/>
    public override long? Stamp
    {
        get
        {
            lock (watching)
            {
                return Reach(() =>
                {
                    if (!Exists)
                    {
                        StopWatching();
                        return 0L;
                    }

                    if (watch is null)
                    {
                        watch = new WriteWatch((SqliteConnection)Connect());
                        watches++;
                    }

                    // What two connections count has nothing to do with each other.
                    return ((long)watches << 32) + watch.Count();
                });
            }
        }
    }

    /// <inheritdoc/>
    public override string Milliseconds => "CAST(unixepoch('subsec') * 1000 AS INTEGER)";

    /// <summary>Writes a copy of the records as they stand at one moment, while others go on writing.</summary>
    /// <param name="file">The copy; a file that is there already is taken over by it.</param>
    public void CopyTo(string file) => Reach(() =>
    {
        using var from = (SqliteConnection)Open();
        using var to = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        to.Open();
        from.BackupDatabase(to);
        // A copy is one file, without a log beside it.
        to.Execute("PRAGMA journal_mode = DELETE");
        return true;
    });

    /// <summary>What is wrong with the file; empty where it is whole.</summary>
    public IReadOnlyList<string> FindDamage() => Reach<IReadOnlyList<string>>(() =>
    {
        using var connection = (SqliteConnection)Connect();
        return [.. connection.Query<string>("PRAGMA integrity_check").Where(line => line != "ok")];
    });

    /// <inheritdoc/>
    protected override void Close()
    {
        lock (watching)
        {
            StopWatching();
        }

        using var connection = new SqliteConnection(ConnectionText);
        SqliteConnection.ClearPool(connection);
    }

    /// <inheritdoc/>
    protected override DbConnection Connect()
    {
        var connection = new SqliteConnection(ConnectionText);
        connection.Open();
        // Full: an acknowledged write outlives a loss of power.
        connection.Execute($"PRAGMA busy_timeout = {MostWaitSeconds * 1000}; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;");
        return connection;
    }

    /// <inheritdoc/>
    protected override DbTransaction BeginReading(DbConnection connection) =>
        ((SqliteConnection)connection).BeginTransaction(IsolationLevel.Serializable, deferred: true);

    /// <inheritdoc/>
    protected override DbTransaction BeginWriting(DbConnection connection) =>
        // Deferred transactions of two writers can end in a deadlock that no waiting mends.
        ((SqliteConnection)connection).BeginTransaction(IsolationLevel.Serializable, deferred: false);

    /// <inheritdoc/>
    protected override UpgradeEngineBuilder Upgrades() => DeployChanges.To.SqliteDatabase(ConnectionText);

    /// <inheritdoc/>
    protected override void MakeRoom()
    {
        if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }

        using var connection = (SqliteConnection)Connect();
        // A write-ahead log stays one once it is: readers and a writer do not wait for each other.
        if (connection.ExecuteScalar<string>("PRAGMA journal_mode") != "wal")
        {
            connection.Execute("PRAGMA journal_mode = WAL");
        }
    }

    /// <inheritdoc/>
    protected override string Explain(Exception fault) => fault is not SqliteException sqlite ? fault.Message : sqlite.SqliteErrorCode switch
    {
        Full => "the disk is full, and nothing of this was written; make room and ask again",
        ReadOnly => "the file may only be read, and nothing of this was written; let this program write to it and to its folder",
        Corrupt or NotADatabase =>
            "the file is damaged, or is none of ours, and was left as it is; put it aside and take the last backup back with: records restore FILE",
        Busy or Locked => $"another program has been writing for more than {MostWaitSeconds} s, and nothing of this was written; ask again when it is done",
        InputOutput => $"the disk failed ({fault.Message}); look after it before the next write",
        CannotOpen => "the file cannot be opened; see that its folder is there and that this program may write to it",
        _ => fault.Message,
    };

    /// <inheritdoc/>
    protected override bool IsContradiction(Exception fault) => fault is SqliteException { SqliteErrorCode: Constraint };

    private void StopWatching()
    {
        watch?.Dispose();
        watch = null;
    }

    private string ConnectionText => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        DefaultTimeout = MostWaitSeconds,
    }.ToString();
}
