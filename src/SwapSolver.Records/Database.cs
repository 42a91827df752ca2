using System.Data;
using Dapper;
using DbUp;
using Microsoft.Data.Sqlite;

namespace SwapSolver.Records;

/// <summary>One embedded database file. It comes into being with the first write: a kitchen without records has no file.</summary>
/// <param name="path">The file.</param>
internal sealed class Database(string path)
{
    /// <summary>How long a writer waits for another process [s].</summary>
    private const int MostWaitSeconds = 5;

    private readonly Lock upgrading = new();

    private bool isUpgraded;

    /// <summary>Whether anything was ever written.</summary>
    public bool Exists => File.Exists(path);

    /// <summary>An open connection to the newest schema.</summary>
    /// <exception cref="RecordsFaultException">The file cannot be reached or is none of ours.</exception>
    public SqliteConnection Open() => Reach(() =>
    {
        lock (upgrading)
        {
            if (!isUpgraded)
            {
                Upgrade();
                isUpgraded = true;
            }
        }

        return OpenAsItIs();
    });

    /// <summary>Writes in one transaction, which also counts the change.</summary>
    /// <param name="write">The writing; the result is whether anything changed.</param>
    /// <exception cref="RecordsFaultException">It could not be written; nothing was.</exception>
    public void Write(Func<IDbConnection, IDbTransaction, bool> write) => Reach(() =>
    {
        using var connection = Open();
        // Deferred transactions of two writers can end in a deadlock that no waiting mends.
        using var transaction = connection.BeginTransaction(IsolationLevel.Serializable, deferred: false);
        if (write(connection, transaction))
        {
            connection.Execute("UPDATE change_counter SET changes = changes + 1", transaction: transaction);
            transaction.Commit();
        }

        return true;
    });

    /// <summary>Reaches the file; what goes wrong on the way is named with the file.</summary>
    private T Reach<T>(Func<T> what)
    {
        try
        {
            return what();
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw new RecordsFaultException($"the records at {path} cannot be reached: {fault.Message}", fault);
        }
    }

    private SqliteConnection OpenAsItIs()
    {
        var connection = new SqliteConnection(ConnectionText);
        connection.Open();
        // Full: an acknowledged write outlives a loss of power.
        connection.Execute("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;");
        return connection;
    }

    private string ConnectionText => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        DefaultTimeout = MostWaitSeconds,
    }.ToString();

    private void Upgrade()
    {
        if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }

        var upgrade = DeployChanges.To.SqliteDatabase(ConnectionText)
            .WithScriptsEmbeddedInAssembly(typeof(Database).Assembly)
            .WithTransaction()
            .LogTo(new NoUpgradeLog())
            .Build()
            .PerformUpgrade();
        if (!upgrade.Successful)
        {
            throw new RecordsFaultException($"the records at {path} cannot be brought to this version: {upgrade.Error.Message}", upgrade.Error);
        }
    }
}
