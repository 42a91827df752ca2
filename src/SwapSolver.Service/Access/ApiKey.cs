using System.Security.Cryptography;
using System.Text;
using SwapSolver.Records.Keys;

namespace SwapSolver.Service.Access;

/// <summary>A key as its holder has it: an id to find it by, and a secret of 256 random bits. Such a secret cannot be guessed, so
/// its salted hash needs no stretching as a password's would (NIST SP 800-63B, 5.1.2.2, on look-up secrets of 112 bits and more; from memory).</summary>
internal static class ApiKey
{
    private const int SecretBytes = 32;

    private const int IdBytes = 5;

    private const char Between = '.';

    /// <summary>Makes a key; the text is for its holder, and what is kept does not hold the secret.</summary>
    public static (StoredKey Kept, string Text) Make(string displayName, Role role, string at)
    {
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));
        var secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
        var salt = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
        return (new StoredKey(id, displayName, role.ToString(), salt, Hash(salt, secret), at, null), $"{id}{Between}{secret}");
    }

    /// <summary>The id in a key's text; empty where it is none.</summary>
    public static string IdOf(string text) => text.IndexOf(Between, StringComparison.Ordinal) is > 0 and var place ? text[..place] : string.Empty;

    /// <summary>Whether a text is this very key. How long that takes says nothing of where they differ.</summary>
    public static bool Matches(StoredKey kept, string text) => CryptographicOperations.FixedTimeEquals(
        Convert.FromHexString(kept.Hash), Convert.FromHexString(Hash(kept.Salt, text[(IdOf(text).Length + 1)..])));

    private static string Hash(string salt, string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{salt}{Between}{secret}")));
}
