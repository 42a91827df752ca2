using System.Security.Cryptography;
using Google.Protobuf;
using SwapSolver.Service.Records;
using SwapSolver.Service.Translation;

namespace SwapSolver.Service.Solves;

/// <summary>Keeps answers by their question and by the state of the kitchen's records and of the stored formulas that were read for it. The program and the shipped facts do not
/// change while the service runs, so a question has one answer until something is written down; one that the time cut
/// short is not kept.</summary>
internal sealed class AnswerCache(AnswerStore store, KitchenToday kitchen, Subject subject)
{
    /// <summary>The answer of a question, from the cache or made now.</summary>
    /// <param name="question">The request.</param>
    /// <param name="make">Makes the answer, and says whether the time cut it short.</param>
    public async Task<TAnswer> Get<TAnswer>(IMessage question, Func<Task<(TAnswer Answer, bool EndedEarly)>> make)
        where TAnswer : class, IMessage<TAnswer>
    {
        var key = $"{kitchen.Version}:{subject.States}:{question.Descriptor.FullName}:{Convert.ToHexString(SHA256.HashData(question.ToByteArray()))}";
        if (store.Memory.TryGetValue(key, out TAnswer? kept) && kept is not null)
        {
            return kept.Clone();
        }

        var (answer, endedEarly) = await make();
        if (!endedEarly)
        {
            using var entry = store.Memory.CreateEntry(key);
            entry.Size = answer.CalculateSize();
            entry.Value = answer.Clone();
        }

        return answer;
    }
}
