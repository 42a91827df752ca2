using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace SwapSolver.Records.Storage;

/// <summary>Hears of every write of others: the engine counts them for each connection (sqlite.org/pragma.html, data_version), so this one is
/// kept open and never writes. Every call of the service looks here, so the statement is kept ready and stepped by hand.</summary>
internal sealed class WriteWatch : IDisposable
{
    private readonly SqliteConnection connection;

    private readonly sqlite3_stmt statement;

    /// <summary>Begins to listen.</summary>
    /// <param name="connection">An open connection for this alone; it is closed with the watch.</param>
    public WriteWatch(SqliteConnection connection)
    {
        this.connection = connection;
        Believe(raw.sqlite3_prepare_v2(connection.Handle, "PRAGMA data_version", out statement));
    }

    /// <summary>A number that is another after every write of another connection.</summary>
    /// <exception cref="SqliteException">The file cannot be read.</exception>
    public long Count()
    {
        try
        {
            Believe(raw.sqlite3_step(statement));
            return raw.sqlite3_column_int64(statement, 0);
        }
        finally
        {
            // Until then it would hold what it read against a writer.
            _ = raw.sqlite3_reset(statement);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        statement.Dispose();
        connection.Dispose();
    }

    private void Believe(int code)
    {
        if (code is not (raw.SQLITE_OK or raw.SQLITE_ROW))
        {
            SqliteException.ThrowExceptionForRC(code, connection.Handle);
        }
    }
}
