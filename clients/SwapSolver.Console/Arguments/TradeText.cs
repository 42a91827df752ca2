using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads what is traded as it is typed: <c>A,B</c>, each with <c>:lower</c> or <c>:higher</c> where neither goes without saying.</summary>
internal static class TradeText
{
    private const string Form = "Write two readings, as net-carbohydrate,protein or hydration:higher,price.";

    /// <summary>Reads the two readings.</summary>
    public static Checked<Trade[]> Read(string text)
    {
        var words = text.Split(',', StringSplitOptions.TrimEntries);
        if (words.Length != 2 || words.Any(word => word.Length == 0))
        {
            return Checked<Trade[]>.Bad($"'{text}' is not a trade. {Form}");
        }

        var read = Array.ConvertAll(words, ReadOne);
        var problems = read.SelectMany(trade => trade.Problems).ToList();
        return problems.Count > 0 ? Checked<Trade[]>.Bad(problems) : read.Select(trade => trade.Value).ToArray();
    }

    private static Checked<Trade> ReadOne(string word)
    {
        var colon = word.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            return new Trade { Reading = word };
        }

        return EnumWord.Read<Trade.Types.Better>(Trade.Descriptor.EnumTypes[0], word[(colon + 1)..])
            .Then(better => new Trade { Reading = word[..colon].Trim(), Better = better });
    }
}
