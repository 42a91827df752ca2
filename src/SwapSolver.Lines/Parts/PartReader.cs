using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Sorts the pieces of one part of a line into measures, name and notes.</summary>
/// <param name="units">The units.</param>
/// <param name="amounts">Reads amounts.</param>
internal sealed class PartReader(UnitWords units, AmountReader amounts)
{
    private static readonly FrozenSet<string> EachOfSeveral = FrozenSet.Create("each", "apiece", "ea");

    /// <summary>An amount behind one of these, in a bracket or a note, is of something else or instead of the first.</summary>
    private static readonly FrozenSet<string> SomethingElse =
        FrozenSet.Create("or", "plus", "for", "with", "if", "instead", "substitute", "sub", "replace", "extra", "more", "per", "not", "use", "see");

    /// <summary>The part, its words sorted.</summary>
    public LinePart Read(ImmutableArray<Chunk> chunks)
    {
        var measures = new List<Found>();
        var name = new List<string>();
        var notes = new List<string>();
        var words = new List<string>();
        var beside = new List<string>();
        var isNote = false;
        var isElse = false;
        var isBeside = false;
        var lastMeasureEnds = -1;
        for (var at = 0; at < chunks.Length;)
        {
            var isLess = measures.Count > 0 && chunks[at] is WordChunk { Lower: "minus" or "less" } && amounts.StartsMeasure(chunks, at + 1);
            var isAgain = measures.Count > 0 && IsAgain(chunks, at, lastMeasureEnds);
            var isTo = measures.Count > 0 && lastMeasureEnds == at && chunks[at] is WordChunk { Lower: "to" } && amounts.StartsMeasure(chunks, at + 1);
            var start = isAgain || isLess || isTo ? at + 1 : at;
            if (isLess || isTo || StartsAmount(chunks, start, measures.Count == 0, name))
            {
                var (measured, thousands, end, inside) = amounts.Read(chunks, start);
                words.AddRange(inside);
                var isOwn = measures.Count == 0 && (measured.Unit is not null || (at > 0 && chunks[at - 1] is SignChunk { Kind: LineToken.Comma }));
                var place = isLess ? Place.Less : isNote && !isOwn ? Place.Note : isAgain ? Place.Again : lastMeasureEnds == at && measures[^1].Place is Place.Plain or Place.Joined ? Place.Joined : Place.Plain;
                if (isNote && isAgain)
                {
                    // What follows is taken instead, and its words say nothing of the first.
                    isElse = true;
                    notes.Add("or");
                }

                var past = PastPacket(chunks, measured, end);
                if (lastMeasureEnds == start - 1 && chunks[at] is SignChunk { Kind: LineToken.Dash } or WordChunk { Lower: "to" } && IsRange(measures, measured))
                {
                    // 100 g to 120 g: one amount with its two ends.
                    measures[^1] = measures[^1] with { Measured = measured with { Amount = new Amount(measures[^1].Measured.Amount.Low, measured.Amount.High) } };
                }
                else if (!isElse)
                {
                    // 2 400 g tins: so many of each. Without a packet behind them, two numbers side by side stay what they are.
                    var isEach = place == Place.Joined ? past > end && measures[^1].Measured.Unit is null : place == Place.Note && past < chunks.Length && chunks[past] is WordChunk each && EachOfSeveral.Contains(each.Lower);
                    measures.Add(new Found(measured, place, thousands, isEach));
                    isBeside = place == Place.Note;
                }

                // What it is sold in can tell what it is: a carton of coconut milk is a drink, a stick of cinnamon no powder.
                if ((measured.Unit is PieceUnit || past > end) && chunks[past - 1] is WordChunk packet)
                {
                    notes.Add(packet.Text);
                }

                lastMeasureEnds = at = SkipOf(chunks, past);
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
                    isBeside = false;
                    break;
                case SignChunk { Kind: LineToken.Slash }:
                    (isNote ? notes : name).Add("or");
                    break;
                case WordChunk word:
                    isElse |= isNote && measures.Count > 0 && SomethingElse.Contains(word.Lower);
                    (isNote ? notes : name).Add(word.Text);
                    words.Add(word.Lower);
                    if (isBeside && !isElse)
                    {
                        beside.Add(word.Text);
                    }

                    break;
            }

            at++;
        }

        return new LinePart([.. measures], [.. name], [.. notes], [.. words]) { Beside = [.. beside], NotCounted = Besides.Of(chunks) };
    }

    // A word is a number before the name, behind 'of' (juice of a lemon), or with a unit (salt, a pinch).
    private bool StartsAmount(ImmutableArray<Chunk> chunks, int at, bool isFirst, List<string> name) =>
        amounts.Starts(chunks, at, isFirst && (name.Count == 0 || name[^1].Equals("of", StringComparison.OrdinalIgnoreCase)))
        || (isFirst && amounts.StartsMeasure(chunks, at))
        || (isFirst && (name.Count == 0 || chunks[at - 1] is SignChunk) && amounts.StartsOne(chunks, at));

    // 150 g / 5 oz, 1 cup or 100 g; a dash only right between two measures.
    private static bool IsAgain(ImmutableArray<Chunk> chunks, int at, int lastMeasureEnds) =>
        at + 1 < chunks.Length && chunks[at + 1] is AmountChunk
        && (chunks[at] is SignChunk { Kind: LineToken.Slash } or WordChunk { Lower: "or" } || (chunks[at] is SignChunk { Kind: LineToken.Dash } && lastMeasureEnds == at));

    private static bool IsRange(List<Found> measures, Measured high) =>
        measures.Count > 0 && measures[^1].Measured is var low && high.Unit is not null && low.Unit == high.Unit && low.Amount.High <= high.Amount.Low;

    private static int SkipOf(ImmutableArray<Chunk> chunks, int at) => at < chunks.Length && chunks[at] is WordChunk { Lower: "of" } ? at + 1 : at;

    // 7 g sachet, 400 g tin, 15 ml spoon: how much is said already. 'Whole' is no packet: it may belong to the name.
    private int PastPacket(ImmutableArray<Chunk> chunks, Measured measured, int at) => (measured.Unit, units.At(chunks, at)) switch
    {
        (MassUnit, { Unit: PieceUnit { IsContainer: true } or PieceUnit { Id: "stick" } } packet) => at + packet.Length,
        (VolumeUnit { DiffersBySystem: false }, { Unit: VolumeUnit { DiffersBySystem: true } or PieceUnit { IsContainer: true } or PieceUnit { Id: "spoon" } } spoon) => at + spoon.Length,
        _ => at,
    };

    private List<Found> InBracket(BracketChunk bracket, List<string> notes, List<string> words, bool isEach)
    {
        var found = new List<Found>();
        var chunks = bracket.Chunks;
        var isElse = false;
        for (var at = 0; at < chunks.Length;)
        {
            if (chunks[at] is AmountChunk)
            {
                var (measured, thousands, end, inside) = amounts.Read(chunks, at);
                if (!isElse)
                {
                    words.AddRange(inside);
                    found.Add(new Found(measured, Place.Bracket, thousands, isEach));
                }

                at = end;
                continue;
            }

            if (chunks[at] is WordChunk word)
            {
                isElse |= SomethingElse.Contains(word.Lower);
                notes.Add(word.Text);
                if (!isElse)
                {
                    words.Add(word.Lower);
                }
            }

            at++;
        }

        return chunks.OfType<WordChunk>().Any(word => EachOfSeveral.Contains(word.Lower)) ? [.. found.Select(one => one with { IsEach = true })] : found;
    }
}
