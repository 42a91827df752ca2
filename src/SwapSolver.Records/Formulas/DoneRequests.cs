using System.Data;
using Dapper;

namespace SwapSolver.Records.Formulas;

/// <summary>Remembers requests that were done, for a day: one that is sent again is then not done again.</summary>
internal static class DoneRequests
{
    /// <summary>The same request as it was done before; null where it was not, or has no id.</summary>
    public static DoneRequest? Find(WriteRequest request, IDbConnection connection, IDbTransaction transaction) => request.Id.Length == 0 ? null : connection.QuerySingleOrDefault<DoneRequest>(
        "SELECT fingerprint AS Fingerprint, name AS Name FROM requests WHERE id = @Id AND done >= @ForgottenBefore", request, transaction);

    /// <summary>Remembers that a request was done.</summary>
    /// <param name="request">The request.</param>
    /// <param name="name">What it was done to.</param>
    /// <param name="connection">The connection.</param>
    /// <param name="transaction">The transaction that does it.</param>
    public static void Remember(WriteRequest request, string name, IDbConnection connection, IDbTransaction transaction)
    {
        if (request.Id.Length > 0)
        {
            connection.Execute("DELETE FROM requests WHERE done < @ForgottenBefore", request, transaction);
            connection.Execute(
                "INSERT INTO requests (id, fingerprint, name, done) VALUES (@Id, @Fingerprint, @name, @At)", new { request.Id, request.Fingerprint, name, request.At }, transaction);
        }
    }
}

/// <summary>A request that was done.</summary>
internal sealed record DoneRequest(string Fingerprint, string Name);
