using System.Numerics;

namespace SwapSolver.Solving.Answers;

/// <summary>The range of a fact cut into equal parts, and which kitchens stand in which: one bit a kitchen, so that those of some
/// kitchens are counted sixty-four at a time.</summary>
internal sealed class RangeParts
{
    /// <summary>Parts that a range is cut into: both its ends may be bad, so a straight line would not see it.</summary>
    public const int Count = 8;

    private const int BitsAWord = 64;

    private readonly ulong[][] parts;

    /// <summary>Sorts the kitchens into parts.</summary>
    /// <param name="shares">Where the fact stands in its range, by kitchen: 0 (low) to 1 (high).</param>
    public RangeParts(double[] shares)
    {
        parts = [.. Enumerable.Range(0, Count).Select(_ => new ulong[Words(shares.Length)])];
        for (var kitchen = 0; kitchen < shares.Length; kitchen++)
        {
            Mark(parts[Math.Min(Count - 1, (int)(shares[kitchen] * Count))], kitchen);
        }
    }

    /// <summary>Some kitchens, one bit each, as they are counted.</summary>
    /// <param name="isChosen">Whether a kitchen is one of them, by kitchen.</param>
    public static ulong[] Chosen(ReadOnlySpan<bool> isChosen)
    {
        var chosen = new ulong[Words(isChosen.Length)];
        for (var kitchen = 0; kitchen < isChosen.Length; kitchen++)
        {
            if (isChosen[kitchen])
            {
                Mark(chosen, kitchen);
            }
        }

        return chosen;
    }

    /// <summary>How many of some kitchens stand in a part.</summary>
    /// <param name="part">The part, 0 (low) to <see cref="Count"/> - 1 (high).</param>
    /// <param name="chosen">The kitchens, of <see cref="Chosen"/>, as many as were sorted.</param>
    public int In(int part, ReadOnlySpan<ulong> chosen)
    {
        var count = 0;
        var kitchens = parts[part];
        for (var word = 0; word < kitchens.Length; word++)
        {
            count += BitOperations.PopCount(kitchens[word] & chosen[word]);
        }

        return count;
    }

    private static int Words(int kitchens) => (kitchens + BitsAWord - 1) / BitsAWord;

    private static void Mark(ulong[] words, int kitchen) => words[kitchen / BitsAWord] |= 1ul << (kitchen % BitsAWord);
}
