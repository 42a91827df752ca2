using System.Collections.Immutable;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Cuts a line where a plus joins two amounts.</summary>
/// <param name="amounts">Knows where an amount begins.</param>
internal sealed class LineSplit(AmountReader amounts)
{
    /// <summary>The pieces of each part; one part where no plus joins.</summary>
    public ImmutableArray<ImmutableArray<Chunk>> Parts(ImmutableArray<Chunk> chunks)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<Chunk>>();
        var start = chunks.TakeWhile(chunk => chunk is SignChunk).Count();
        for (var at = start + 1; at < chunks.Length; at++)
        {
            var joins = chunks[at] is SignChunk { Kind: LineToken.Plus } or WordChunk { Lower: "plus" } && amounts.Starts(chunks, at + 1, takesWords: true);
            // One and a half is one number; a cup and two tablespoons are two amounts.
            var and = chunks[at] is WordChunk { Lower: "and" }
                && !amounts.EndsBefore(chunks, at)
                && (amounts.Starts(chunks, at + 1, takesWords: false) || amounts.StartsMeasure(chunks, at + 1));
            if (joins || and)
            {
                parts.Add(chunks[start..at]);
                start = at + 1;
            }
        }

        parts.Add(chunks[start..]);
        return parts.ToImmutable();
    }
}
