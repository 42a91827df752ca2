using System.Collections.Immutable;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Cuts a line where a plus joins two amounts.</summary>
/// <param name="reader">Knows where an amount begins.</param>
internal sealed class LineSplit(PartReader reader)
{
    /// <summary>The pieces of each part; one part where no plus joins.</summary>
    public ImmutableArray<ImmutableArray<Chunk>> Parts(ImmutableArray<Chunk> chunks)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<Chunk>>();
        var start = chunks.TakeWhile(chunk => chunk is SignChunk).Count();
        for (var at = start + 1; at < chunks.Length; at++)
        {
            var joins = chunks[at] is SignChunk { Kind: LineToken.Plus } or WordChunk { Lower: "plus" } && reader.StartsAmount(chunks, at + 1, takesWords: true);
            var and = chunks[at] is WordChunk { Lower: "and" } && reader.StartsAmount(chunks, at + 1, takesWords: false);
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
