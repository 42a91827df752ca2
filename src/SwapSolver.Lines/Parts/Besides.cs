using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>What a bracket or a note behind the comma names besides the ingredient: another choice, more of it, or something
/// with an amount that goes with it. None of that is in the grams, so the caller is told.</summary>
internal static class Besides
{
    /// <summary>Words that open such a remark.</summary>
    private static readonly FrozenSet<string> Opens = FrozenSet.Create("or", "plus", "with");

    /// <summary>The remarks, as written.</summary>
    /// <param name="chunks">The pieces of the part.</param>
    public static ImmutableArray<string> Of(ImmutableArray<Chunk> chunks)
    {
        var note = chunks.IndexOf(chunks.FirstOrDefault(chunk => chunk is SignChunk { Kind: LineToken.Comma })!);
        var isNamed = note > 0 && chunks.Take(note).OfType<AmountChunk>().Any() && chunks.Take(note).OfType<WordChunk>().Any();
        var groups = chunks.OfType<BracketChunk>().Select(bracket => bracket.Chunks);
        return [.. (isNamed ? groups.Append(chunks[(note + 1)..]) : groups).Select(Remark).OfType<string>()];
    }

    private static string? Remark(ImmutableArray<Chunk> chunks)
    {
        var remark = chunks.SkipWhile(chunk => chunk is not WordChunk word || !Opens.Contains(word.Lower)).ToList();
        return remark switch
        {
            [] or [_] => null,
            // With a skin is a way to be; with 1 tbsp of water is something else in the bowl.
            [WordChunk { Lower: "with" }, ..] when !remark.OfType<AmountChunk>().Any() => null,
            _ => string.Join(' ', remark.Select(Written).OfType<string>()),
        };
    }

    private static string? Written(Chunk chunk) => chunk switch
    {
        WordChunk word => word.Text,
        AmountChunk { Amount: var amount } => amount.Low == amount.High ? Figure(amount.Low) : $"{Figure(amount.Low)}-{Figure(amount.High)}",
        _ => null,
    };

    private static string Figure(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
