using System.Security.Cryptography;
using Google.Protobuf;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Faults;

namespace SwapSolver.Service.Stored;

/// <summary>Reads a request to change something, so that one that is sent again is done once.</summary>
internal sealed class RequestReader(TimeProvider clock)
{
    private const int MostLetters = 64;

    private static readonly TimeSpan Remembered = TimeSpan.FromDays(1);

    /// <summary>The request; where problems were added it is not to be used.</summary>
    /// <param name="id">Its id; empty for none.</param>
    /// <param name="request">The request.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="isOnlyTried">Whether nothing of it is to be kept.</param>
    public WriteRequest Read(string id, IMessage request, ProblemList problems, bool isOnlyTried = false)
    {
        if (id.Length > MostLetters || id.Any(letter => letter is < '!' or > '~'))
        {
            problems.Add("requestId", id, "is no id of a request", $"give at most {MostLetters} letters, digits and signs without spaces, as a UUID");
        }

        var now = clock.GetUtcNow();
        var fingerprint = $"{request.Descriptor.Name}:{Convert.ToHexStringLower(SHA256.HashData(request.ToByteArray()))}";
        return new WriteRequest(id, fingerprint, Moment.Write(now), Moment.Write(now - Remembered), isOnlyTried);
    }
}
