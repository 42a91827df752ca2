using System.Data;
using System.Data.Common;
using DbUp.Builder;
using DbUp.Engine;

namespace SwapSolver.Records.Storage;

/// <summary>The engine that holds the records. What is asked of it is the same for every engine; how it locks, where it
/// lies and what its faults mean is its own.</summary>
internal abstract class Database : IDisposable
{
    /// <summary>Two programs may bring the same records up at once: the one that comes second finds it done.</summary>
    private const int MostUpgrades = 5;

    private readonly Lock upgrading = new();

    // Writers of this program wait here in line, without a thread each: hundreds that wait inside the engine, or hold the
    // threads that its answers come in on, would starve each other.
    private readonly SemaphoreSlim writing = new(1, 1);

    private bool isUpgraded;

    /// <summary>Where the records lie, without anything secret.</summary>
    public abstract string Place { get; }

    /// <summary>Whether anything was ever written.</summary>
    public abstract bool Exists { get; }

    /// <summary>Changes with every write, whoever writes, and costs far less than to read; null where the engine has no such stamp.</summary>
    /// <exception cref="RecordsFaultException">The records cannot be reached.</exception>
    public virtual long? Stamp => null;

    /// <summary>The engine's own clock in its own words [ms since 1970].</summary>
    public abstract string Milliseconds { get; }

    /// <summary>The engine for a place.</summary>
    /// <param name="place">A folder, or the connection string of a PostgreSQL database.</param>
    public static Database At(string place) => RecordsPlace.IsServer(place)
        ? new PostgresDatabase(place)
        : new SqliteDatabase(Path.Combine(place, SqliteDatabase.FileName));

    /// <summary>Reads, and sees one state of the records from start to end.</summary>
    /// <param name="read">The reading.</param>
    /// <exception cref="RecordsFaultException">The records cannot be reached or are none of ours.</exception>
    public T Read<T>(Func<IDbConnection, IDbTransaction, T> read) => Reach(() =>
    {
        using var connection = Open();
        using var transaction = BeginReading(connection);
        var result = read(connection, transaction);
        transaction.Rollback();
        return result;
    });

    /// <summary>Writes in one transaction, alone: whoever writes next waits.</summary>
    /// <param name="write">The writing; where it says that there is nothing to keep, nothing changes.</param>
    /// <exception cref="RecordsFaultException">It could not be written.</exception>
    public async Task<T> WriteAsync<T>(Func<IDbConnection, IDbTransaction, (bool Keep, T Result)> write)
    {
        await writing.WaitAsync();
        try
        {
            return WriteNow(write);
        }
        finally
        {
            writing.Release();
        }
    }

    /// <summary>The same for a caller that holds its thread while it waits.</summary>
    public T Write<T>(Func<IDbConnection, IDbTransaction, (bool Keep, T Result)> write)
    {
        writing.Wait();
        try
        {
            return WriteNow(write);
        }
        finally
        {
            writing.Release();
        }
    }

    /// <summary>Brings the records to the newest schema, if that was not yet done.</summary>
    public void Prepare() => Read((_, _) => true);

    /// <summary>Reaches the engine; what goes wrong on the way is named with the place and the way out.</summary>
    public T Reach<T>(Func<T> what)
    {
        try
        {
            return what();
        }
        catch (Exception fault) when (fault is DbException or IOException or UnauthorizedAccessException or TimeoutException)
        {
            throw new RecordsFaultException($"the records at {Place} cannot be reached: {Explain(fault)}", fault) { IsContradiction = IsContradiction(fault) };
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        writing.Dispose();
        Close();
    }

    /// <summary>Lets go of every connection.</summary>
    protected abstract void Close();

    /// <summary>An open connection to the newest schema.</summary>
    protected DbConnection Open()
    {
        lock (upgrading)
        {
            if (!isUpgraded)
            {
                Upgrade();
                isUpgraded = true;
            }
        }

        return Connect();
    }

    /// <summary>An open connection, whatever the schema is.</summary>
    protected abstract DbConnection Connect();

    /// <summary>Begins to read one state.</summary>
    protected abstract DbTransaction BeginReading(DbConnection connection);

    /// <summary>Begins to write, alone.</summary>
    protected abstract DbTransaction BeginWriting(DbConnection connection);

    /// <summary>What brings the schema up.</summary>
    protected abstract UpgradeEngineBuilder Upgrades();

    /// <summary>Makes room for the schema where there is none.</summary>
    protected abstract void MakeRoom();

    /// <summary>What a fault of the engine means, and what to do.</summary>
    protected abstract string Explain(Exception fault);

    /// <summary>Whether the engine refused what contradicts itself.</summary>
    protected abstract bool IsContradiction(Exception fault);

    private T WriteNow<T>(Func<IDbConnection, IDbTransaction, (bool Keep, T Result)> write) => Reach(() =>
    {
        using var connection = Open();
        using var transaction = BeginWriting(connection);
        var (keep, result) = write(connection, transaction);
        if (keep)
        {
            transaction.Commit();
        }
        else
        {
            transaction.Rollback();
        }

        return result;
    });

    private void Upgrade()
    {
        MakeRoom();
        DatabaseUpgradeResult done;
        var left = MostUpgrades;
        do
        {
            var engine = Upgrades().WithScriptsEmbeddedInAssembly(typeof(Database).Assembly).WithTransaction().LogTo(new NoUpgradeLog()).Build();
            if (engine.GetExecutedButNotDiscoveredScripts() is { Count: > 0 } unknown)
            {
                throw new RecordsFaultException(
                    $"the records at {Place} were written by a newer release of this program, and were left as they are: it brought them to '{unknown[^1]}', which is not known here. Use that release");
            }

            done = engine.PerformUpgrade();
        }
        while (!done.Successful && --left > 0);
        if (!done.Successful)
        {
            throw new RecordsFaultException($"the records at {Place} cannot be brought to this version: {Explain(done.Error)}", done.Error);
        }
    }
}
