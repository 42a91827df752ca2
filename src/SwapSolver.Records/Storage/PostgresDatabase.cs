using System.Data;
using System.Data.Common;
using Dapper;
using DbUp;
using DbUp.Builder;
using Npgsql;

namespace SwapSolver.Records.Storage;

/// <summary>A database of a PostgreSQL server. The schema comes into being with the first write.</summary>
/// <param name="connectionText">The connection string.</param>
internal sealed class PostgresDatabase(string connectionText) : Database
{
    private readonly NpgsqlDataSource source = Source(connectionText);

    private bool exists;

    /// <inheritdoc/>
    public override string Place { get; } = PlaceOf(connectionText);

    /// <inheritdoc/>
    public override bool Exists => exists || Reach(() =>
    {
        using var connection = source.OpenConnection();
        return exists = connection.ExecuteScalar<bool>("SELECT to_regclass('change_counter') IS NOT NULL");
    });

    /// <inheritdoc/>
    public override string Milliseconds => "CAST(EXTRACT(EPOCH FROM clock_timestamp()) * 1000 AS BIGINT)";

    /// <inheritdoc/>
    protected override void Close() => source.Dispose();

    /// <inheritdoc/>
    protected override DbConnection Connect() => source.OpenConnection();

    /// <inheritdoc/>
    protected override DbTransaction BeginReading(DbConnection connection) =>
        // One snapshot for all statements, as a reading transaction of the embedded engine has.
        connection.BeginTransaction(IsolationLevel.RepeatableRead);

    /// <inheritdoc/>
    protected override DbTransaction BeginWriting(DbConnection connection)
    {
        var transaction = connection.BeginTransaction(IsolationLevel.ReadCommitted);
        // One writer at a time, as with the embedded engine; readers go on. An acknowledged write outlives a loss of power
        // whatever the server is set to.
        connection.Execute("SET LOCAL synchronous_commit TO on; LOCK TABLE change_counter IN EXCLUSIVE MODE", transaction: transaction);
        return transaction;
    }

    /// <inheritdoc/>
    protected override UpgradeEngineBuilder Upgrades() => DeployChanges.To.PostgresqlDatabase(connectionText).WithPreprocessor(new PostgresTypes());

    /// <inheritdoc/>
    protected override void MakeRoom()
    {
        // The server was told by its connection string which database to use, and it is there or not.
    }

    /// <inheritdoc/>
    protected override string Explain(Exception fault) => fault switch
    {
        PostgresException { SqlState: PostgresErrorCodes.DiskFull } => "the server's disk is full, and nothing of this was written; make room and ask again",
        PostgresException { SqlState: PostgresErrorCodes.ReadOnlySqlTransaction } => "the server only lets itself be read, and nothing of this was written; ask the one that may be written to",
        PostgresException { SqlState: PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow } =>
            "the server is stopping or starting; ask again in a moment",
        PostgresException refused => $"the server says: {refused.MessageText}",
        _ => $"the server does not answer ({fault.Message.ReplaceLineEndings(" ")}); see that it runs, and ask again with the same request id: what was written is not written twice",
    };

    /// <inheritdoc/>
    protected override bool IsContradiction(Exception fault) => fault is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.ForeignKeyViolation };

    private static NpgsqlDataSource Source(string text)
    {
        try
        {
            return NpgsqlDataSource.Create(text);
        }
        catch (ArgumentException fault)
        {
            throw new RecordsFaultException($"'--records' names a server, but its connection string cannot be read ({fault.Message}); write it as Host=localhost;Database=kitchen;Username=baker", fault);
        }
    }

    private static string PlaceOf(string text)
    {
        try
        {
            var builder = new NpgsqlConnectionStringBuilder(text);
            return $"{builder.Host}:{builder.Port}/{builder.Database ?? builder.Username}";
        }
        catch (ArgumentException)
        {
            return "the server";
        }
    }
}
