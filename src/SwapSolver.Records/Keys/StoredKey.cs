namespace SwapSolver.Records.Keys;

/// <summary>A key to this kitchen, as it is kept: of the key itself only a salted hash.</summary>
/// <param name="Id">Its id.</param>
/// <param name="DisplayName">Whose it is.</param>
/// <param name="Role">What it may do.</param>
/// <param name="Salt">The salt, in hexadecimal.</param>
/// <param name="Hash">The hash, in hexadecimal.</param>
/// <param name="Created">When it was made (RFC 3339).</param>
/// <param name="Revoked">When it was taken back (RFC 3339); null where it was not.</param>
public sealed record StoredKey(string Id, string DisplayName, string Role, string Salt, string Hash, string Created, string? Revoked);
