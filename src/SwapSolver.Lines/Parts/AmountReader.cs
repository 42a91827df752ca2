using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>How many of what, as it stands in a line.</summary>
/// <param name="Measured">The measure.</param>
/// <param name="Thousands">Whether its number can be thousands or decimals.</param>
/// <param name="End">The place behind it.</param>
/// <param name="Words">The words inside it that are no number and no unit, in small letters.</param>
internal sealed record ReadAmount(Measured Measured, ThousandsSign Thousands, int End, ImmutableArray<string> Words);

/// <summary>Reads how many of what: numbers, words that are numbers, and the unit behind them.</summary>
/// <param name="units">The units.</param>
/// <param name="numbers">Words that are numbers.</param>
internal sealed class AmountReader(UnitWords units, ImmutableDictionary<string, Amount> numbers)
{
    /// <summary>Whether a number, or a word that is one, stands at a place.</summary>
    public bool Starts(ImmutableArray<Chunk> chunks, int at, bool takesWords) =>
        at < chunks.Length && (chunks[at] is AmountChunk || (takesWords && Said(chunks, at) is not null));

    /// <summary>Whether a number or number word with a unit behind it stands at a place, as a pinch.</summary>
    public bool StartsMeasure(ImmutableArray<Chunk> chunks, int at) => Starts(chunks, at, takesWords: true) && Read(chunks, at).Measured.Unit is not null;

    /// <summary>Whether a unit stands at a place for one of it: pinch of salt, handful nuts, and at the end of a line: salt, pinch.</summary>
    public bool StartsOne(ImmutableArray<Chunk> chunks, int at) => units.At(chunks, at) is { } found
        && (found.Unit is PieceUnit { Volume: not null } or PieceUnit { Of.IsEmpty: false, IsContainer: false, Id: not "whole" }
            || chunks.ElementAtOrDefault(at + found.Length) is WordChunk { Lower: "of" })
        && chunks.ElementAtOrDefault(at + found.Length) is null or WordChunk;

    /// <summary>Whether a number ends right before a place.</summary>
    public bool EndsBefore(ImmutableArray<Chunk> chunks, int at) => Starts(chunks, at - 1, takesWords: true);

    /// <summary>Reads the measure that starts at a place.</summary>
    public ReadAmount Read(ImmutableArray<Chunk> chunks, int at)
    {
        var amount = Amount.One;
        var thousands = ThousandsSign.None;
        var words = ImmutableArray.CreateBuilder<string>();
        for (var isFirst = true; at < chunks.Length; isFirst = false)
        {
            if (chunks[at] is AmountChunk number && (isFirst || IsFactor(chunks, at)))
            {
                amount *= number.Amount;
                thousands = number.Thousands == ThousandsSign.None ? thousands : number.Thousands;
            }
            else if (Said(chunks, at) is { } said)
            {
                amount *= said;
            }
            else if (!isFirst && PartBehind(chunks, at) is var (part, length))
            {
                amount = new Amount(amount.Low + part, amount.High + part);
                at += length;
                continue;
            }
            else if (!isFirst && IsSaidAgain(chunks, at))
            {
                // One (1) tablespoon: the bracket says the number again.
            }
            else if (!IsBetweenNumbers(chunks, at, isFirst))
            {
                break;
            }
            else if (chunks[at] is WordChunk { Lower: not ("x" or "by" or "of") } word)
            {
                words.Add(word.Lower);
            }

            at++;
        }

        return WithUnit(chunks, at, amount, thousands, words);
    }

    private ReadAmount WithUnit(ImmutableArray<Chunk> chunks, int at, Amount amount, ThousandsSign thousands, ImmutableArray<string>.Builder words)
    {
        MeasureSystem? system = null;
        Unit? unit = null;
        if (units.At(chunks, at) is { } found)
        {
            words.AddRange(found.Before);
            (unit, system, at) = (found.Unit, found.System, at + found.Length);
            if (PartBehind(chunks, at) is var (part, length))
            {
                amount = new Amount(amount.Low + part, amount.High + part);
                at += length;
            }
        }

        var filling = words.Select(units.FillingOf).FirstOrDefault(one => one is not null);
        return new ReadAmount(new Measured(amount, unit, system, filling, []), thousands, at, words.ToImmutable());
    }

    private Amount? Said(ImmutableArray<Chunk> chunks, int at) =>
        at >= 0 && at < chunks.Length && chunks[at] is WordChunk word && numbers.TryGetValue(word.Lower, out var said) ? said : null;

    // A number multiplies what stands before it behind a times sign, or behind a word: 'one 8 oz block'.
    private static bool IsFactor(ImmutableArray<Chunk> chunks, int at) =>
        chunks[at - 1] is SignChunk { Kind: LineToken.Times } or WordChunk;

    private bool IsSaidAgain(ImmutableArray<Chunk> chunks, int at) =>
        chunks[at] is BracketChunk { Chunks: [var only] }
        && (only as AmountChunk)?.Amount is var number && (number ?? Said([only], 0)) is { } again
        && again == (chunks[at - 1] is AmountChunk { Amount: var before } ? before : Said(chunks, at - 1))
        && units.At(chunks, at + 1) is not null;

    // 2 x 100 g; three quarters of a cup; a heaped 1/4 cup.
    private bool IsBetweenNumbers(ImmutableArray<Chunk> chunks, int at, bool isFirst) => chunks[at] switch
    {
        SignChunk { Kind: LineToken.Times } or WordChunk { Lower: "x" or "by" } => at + 1 < chunks.Length && chunks[at + 1] is AmountChunk,
        // Two-thirds.
        SignChunk { Kind: LineToken.Dash } => !isFirst && chunks[at - 1] is WordChunk && Said(chunks, at + 1) is { High: < 1 },
        WordChunk { Lower: "of" } => !isFirst && Said(chunks, at + 1) is not null,
        WordChunk word => !isFirst && units.FillingOf(word.Lower) is not null && Starts(chunks, at + 1, takesWords: true),
        _ => false,
    };

    /// <summary>The 'and a half' of one and a half, with its length; null where none stands there.</summary>
    private (double Part, int Length)? PartBehind(ImmutableArray<Chunk> chunks, int at)
    {
        if (at >= chunks.Length || chunks[at] is not WordChunk { Lower: "and" })
        {
            return null;
        }

        var part = 1.0;
        var end = at + 1;
        while (Said(chunks, end) is { } said)
        {
            part *= said.Low;
            end++;
        }

        // Behind a unit, a part with a unit of its own is another amount: a cup and half a cup.
        return part < 1 && (Starts(chunks, at - 1, takesWords: true) || units.At(chunks, end) is null) ? (part, end - at) : null;
    }
}
