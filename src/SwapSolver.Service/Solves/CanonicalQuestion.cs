using System.Globalization;
using System.Security.Cryptography;
using Google.Protobuf;
using SwapSolver.Service.Translation;
using SwapSolver.V1;

namespace SwapSolver.Service.Solves;

/// <summary>What a question is, however it was written: its formula stands in grams and in the order of ids, be it given inline, by
/// name, in cups or in words.</summary>
internal static class CanonicalQuestion
{
    /// <summary>A key of the question.</summary>
    /// <param name="question">The request.</param>
    /// <param name="asked">Its formula in the order of ids; null where its lines stay as they were written.</param>
    public static string KeyOf(IMessage question, ReadFormula? asked)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        if (asked is null)
        {
            hash.AppendData(question.ToByteArray());
        }
        else
        {
            var canonical = question.Descriptor.Parser.ParseFrom(question.ToByteArray());
            var fields = canonical.Descriptor;
            fields.FindFieldByName("name")?.Accessor.Clear(canonical);
            fields.FindFieldByName("formula").Accessor.SetValue(canonical, FormulaWriter.Write(asked.Formula));
            hash.AppendData(canonical.ToByteArray());
            // A cup may weigh this or that, which a line in grams may not; of all questions only the measuring one minds.
            foreach (var range in question is BalanceFormulaRequest ? asked.Lines.Select(line => line.MayWeigh) : [])
            {
                hash.AppendData(System.Text.Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{range?.Low.Value:R}..{range?.High.Value:R};")));
            }
        }

        return $"{question.Descriptor.FullName}:{Convert.ToHexString(hash.GetHashAndReset())}";
    }
}
