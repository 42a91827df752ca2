using System.Security.Cryptography;
using Google.Protobuf;
using Microsoft.Extensions.Caching.Memory;

namespace SwapSolver.Service.Solves;

/// <summary>Keeps answers by their question. Facts and program do not change while the service runs, so a question has
/// one answer; one that the time cut short is not kept.</summary>
internal sealed class AnswerCache : IDisposable
{
    /// <summary>Most that is kept [bytes].</summary>
    private const long MostBytes = 64 * 1024 * 1024;

    private readonly MemoryCache cache = new(new MemoryCacheOptions { SizeLimit = MostBytes });

    /// <summary>The answer of a question, from the cache or made now.</summary>
    /// <param name="question">The request.</param>
    /// <param name="make">Makes the answer, and says whether the time cut it short.</param>
    public async Task<TAnswer> Get<TAnswer>(IMessage question, Func<Task<(TAnswer Answer, bool EndedEarly)>> make)
        where TAnswer : class, IMessage<TAnswer>
    {
        var key = $"{question.Descriptor.FullName}:{Convert.ToHexString(SHA256.HashData(question.ToByteArray()))}";
        if (cache.TryGetValue(key, out TAnswer? kept) && kept is not null)
        {
            return kept.Clone();
        }

        var (answer, endedEarly) = await make();
        if (!endedEarly)
        {
            using var entry = cache.CreateEntry(key);
            entry.Size = answer.CalculateSize();
            entry.Value = answer.Clone();
        }

        return answer;
    }

    /// <inheritdoc/>
    public void Dispose() => cache.Dispose();
}
