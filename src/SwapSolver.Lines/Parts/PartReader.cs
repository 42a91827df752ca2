using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Sorts the pieces of one part of a line into measures, name and notes.</summary>
/// <param name="units">The units.</param>
/// <param name="numbers">Words that are numbers.</param>
internal sealed class PartReader(UnitWords units, ImmutableDictionary<string, Amount> numbers)
{
    private static readonly FrozenSet<string> EachOfSeveral = FrozenSet.Create("each", "apiece", "ea");

    /// <summary>The part, its words sorted.</summary>
    public LinePart Read(ImmutableArray<Chunk> chunks)
    {
        var measures = new List<Found>();
        var name = new List<string>();
        var notes = new List<string>();
        var words = new List<string>();
        var isNote = false;
        var lastMeasureEnds = -1;
        for (var at = 0; at < chunks.Length;)
        {
            var isAgain = IsAgain(chunks, at) && measures.Count > 0;
            var start = isAgain ? at + 1 : at;
            if (StartsAmount(chunks, start, measures.Count == 0 && (name.Count == 0 || name[^1].Equals("of", StringComparison.OrdinalIgnoreCase))) && ReadMeasure(chunks, start, words) is var (measured, isGrouped, end))
            {
                var isOwn = measures.Count == 0 && (measured.Unit is not null || (at > 0 && chunks[at - 1] is SignChunk { Kind: LineToken.Comma }));
                var place = isNote && !isOwn ? Place.Note : isAgain ? Place.Again : lastMeasureEnds == at && measures[^1].Place is Place.Plain or Place.Joined ? Place.Joined : Place.Plain;
                measures.Add(new Found(measured, place, isGrouped, false));
                lastMeasureEnds = at = SkipOf(chunks, PastPacket(chunks, measured, end));
                continue;
            }

            switch (chunks[at])
            {
                case BracketChunk bracket:
                    measures.AddRange(InBracket(bracket, notes, words, isEach: at + 1 < chunks.Length && lastMeasureEnds == at && measures[^1].Measured.Unit is null && units.At(chunks, at + 1)?.Unit is PieceUnit));
                    if (lastMeasureEnds == at && measures.Count > 0 && units.At(chunks, at + 1) is { Unit: PieceUnit } piece && name.Count == 0)
                    {
                        at = SkipOf(chunks, at + 1 + piece.Length);
                        continue;
                    }

                    break;
                case SignChunk { Kind: LineToken.Comma }:
                    isNote |= name.Count > 0;
                    break;
                case SignChunk { Kind: LineToken.Slash }:
                    (isNote ? notes : name).Add("or");
                    break;
                case WordChunk word:
                    (isNote ? notes : name).Add(word.Text);
                    words.Add(word.Lower);
                    break;
            }

            at++;
        }

        return new LinePart([.. measures], [.. name], [.. notes], [.. words]);
    }

    /// <summary>Whether a number, or a word that is one, stands at a place.</summary>
    public bool StartsAmount(ImmutableArray<Chunk> chunks, int at, bool takesWords) =>
        at < chunks.Length && (chunks[at] is AmountChunk || (takesWords && chunks[at] is WordChunk word && numbers.ContainsKey(word.Lower)));

    private static bool IsAgain(ImmutableArray<Chunk> chunks, int at) =>
        at + 1 < chunks.Length && chunks[at + 1] is AmountChunk && chunks[at] is SignChunk { Kind: LineToken.Slash } or WordChunk { Lower: "or" };

    private static int SkipOf(ImmutableArray<Chunk> chunks, int at) => at < chunks.Length && chunks[at] is WordChunk { Lower: "of" } ? at + 1 : at;

    // 7 g sachet, 400 g tin: the weight is said already. 'Whole' is no packet: it may belong to the name.
    private int PastPacket(ImmutableArray<Chunk> chunks, Measured measured, int at) =>
        measured.Unit is MassUnit && units.At(chunks, at) is { Unit: PieceUnit { Id: "packet" or "can" or "block" or "stick" } } packet ? at + packet.Length : at;

    private (Measured Measured, bool IsGrouped, int End) ReadMeasure(ImmutableArray<Chunk> chunks, int at, List<string> words)
    {
        var amount = Amount.One;
        var isGrouped = false;
        for (var isFirst = true; at < chunks.Length; isFirst = false)
        {
            if (chunks[at] is AmountChunk number && (isFirst || IsFactor(chunks, at)))
            {
                amount *= number.Amount;
                isGrouped |= number.IsGrouped;
            }
            else if (chunks[at] is WordChunk word && numbers.TryGetValue(word.Lower, out var said))
            {
                amount *= said;
            }
            else if (!(chunks[at] is SignChunk { Kind: LineToken.Times } or WordChunk { Lower: "x" } && at + 1 < chunks.Length && chunks[at + 1] is AmountChunk))
            {
                break;
            }

            at++;
        }

        if (units.At(chunks, at) is not { } unit)
        {
            return (new Measured(amount, null, null, null, []), isGrouped, at);
        }

        words.AddRange(unit.Before);
        var filling = unit.Before.Select(units.FillingOf).FirstOrDefault(one => one is not null);
        return (new Measured(amount, unit.Unit, unit.System, filling, []), isGrouped, at + unit.Length);
    }

    // A number multiplies what stands before it behind a times sign, or behind a word: 'one 8 oz block'.
    private static bool IsFactor(ImmutableArray<Chunk> chunks, int at) =>
        chunks[at - 1] is SignChunk { Kind: LineToken.Times } or WordChunk;

    private List<Found> InBracket(BracketChunk bracket, List<string> notes, List<string> words, bool isEach)
    {
        var found = new List<Found>();
        var chunks = bracket.Chunks;
        for (var at = 0; at < chunks.Length;)
        {
            if (chunks[at] is AmountChunk)
            {
                var (measured, isGrouped, end) = ReadMeasure(chunks, at, words);
                found.Add(new Found(measured, Place.Bracket, isGrouped, isEach));
                at = end;
                continue;
            }

            if (chunks[at] is WordChunk word)
            {
                notes.Add(word.Text);
                words.Add(word.Lower);
            }

            at++;
        }

        return chunks.OfType<WordChunk>().Any(word => EachOfSeveral.Contains(word.Lower)) ? [.. found.Select(one => one with { IsEach = true })] : found;
    }
}
