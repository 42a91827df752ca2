using System.Collections.Concurrent;
using System.Data;
using Dapper;
using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Keys;

/// <summary>The keys to this kitchen.</summary>
public sealed class KeyRecords
{
    internal const string Columns = "id AS Id, display_name AS DisplayName, role AS Role, salt AS Salt, hash AS Hash, created AS Created, revoked AS Revoked";

    private readonly Database database;

    // Every call shows a key. One that is not known is not kept: there is no end of those.
    private readonly ConcurrentDictionary<string, (long Stamp, StoredKey Key)> known = new(StringComparer.Ordinal);

    internal KeyRecords(Database database) => this.database = database;

    /// <summary>A key by its id; null where there is none.</summary>
    /// <param name="id">The id.</param>
    /// <param name="seen">The stamp of the records that was looked at for this very question, where it was.</param>
    public StoredKey? Find(string id, long? seen = null)
    {
        // The stamp before the reading: what is written between the two is read again the next time.
        var stamp = seen ?? database.Stamp;
        if (stamp is { } now && known.TryGetValue(id, out var before) && before.Stamp == now)
        {
            return before.Key;
        }

        if (!database.Exists)
        {
            return null;
        }

        var found = database.Read((connection, transaction) => Find(id, connection, transaction));
        if (found is not null && stamp is { } then)
        {
            known[id] = (then, found);
        }

        return found;
    }

    /// <summary>All keys, by the time they were made.</summary>
    public IReadOnlyList<StoredKey> List() => !database.Exists ? [] : database.Read((connection, transaction) =>
        connection.Query<StoredKey>($"SELECT {Columns} FROM api_keys ORDER BY created, id", transaction: transaction).AsList());

    /// <summary>Keeps a new key.</summary>
    public Task CreateAsync(StoredKey key) => database.WriteAsync((connection, transaction) =>
    {
        Insert(key, connection, transaction);
        return (true, true);
    });

    /// <summary>Takes a key back; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="at">When (RFC 3339).</param>
    public Task<StoredKey?> RevokeAsync(string id, string at) => database.WriteAsync((connection, transaction) =>
    {
        var isChanged = connection.Execute("UPDATE api_keys SET revoked = @at WHERE id = @id AND revoked IS NULL", new { id, at }, transaction) > 0;
        return (isChanged, Find(id, connection, transaction));
    });

    internal static void Insert(StoredKey key, IDbConnection connection, IDbTransaction transaction) => connection.Execute(
        "INSERT INTO api_keys (id, display_name, role, salt, hash, created, revoked) VALUES (@Id, @DisplayName, @Role, @Salt, @Hash, @Created, @Revoked)", key, transaction);

    private static StoredKey? Find(string id, IDbConnection connection, IDbTransaction transaction) =>
        connection.QuerySingleOrDefault<StoredKey>($"SELECT {Columns} FROM api_keys WHERE id = @id", new { id }, transaction);
}
