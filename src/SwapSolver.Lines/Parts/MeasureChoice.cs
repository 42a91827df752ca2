using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Which of the measures of a part counts.</summary>
/// <param name="Counts">The measures that are added up; empty where none counts.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="Problem">Why none counts; null where some do.</param>
internal sealed record MeasureChoice(ImmutableArray<Measured> Counts, ImmutableArray<string> Assumed, string? Problem)
{
    /// <summary>The measures that are taken away from those.</summary>
    public ImmutableArray<Measured> Less { get; private init; } = [];

    /// <summary>Chooses: a weight before a volume, a volume in millilitres before spoons and cups, else the first.</summary>
    public static MeasureChoice Of(ImmutableArray<Found> measures)
    {
        if (measures.FirstOrDefault(found => found.Measured.Amount.Low > found.Measured.Amount.High) is { } backwards)
        {
            return Refused(FormattableString.Invariant($"the range {backwards.Measured.Amount.Low:0.##} to {backwards.Measured.Amount.High:0.##} runs backwards; write the smaller number first"));
        }

        // In a note only a weight can be the line's own amount; other numbers there are about something else.
        var usable = measures.Where(found => found.Place is not (Place.Note or Place.Less) || (found.Place == Place.Note && found.Measured.Unit is MassUnit)).ToImmutableArray();
        if (usable.IsEmpty)
        {
            return Refused("no amount is given; give grams, or a spoon, a cup or a count");
        }

        var chosen = usable.FirstOrDefault(found => found.Measured.Unit is MassUnit)
            ?? usable.FirstOrDefault(found => found.Measured.Unit is VolumeUnit { DiffersBySystem: false })
            ?? (usable[0].Measured.Unit is PieceUnit { IsContainer: true } ? usable.FirstOrDefault(found => found.Place == Place.Bracket && found.Measured.Unit is VolumeUnit) : null)
            ?? usable.FirstOrDefault(found => found.Place != Place.Bracket && found.Measured.Unit is not null)
            ?? usable.FirstOrDefault(found => found.Place != Place.Bracket)
            ?? usable[0];
        var plain = usable.Where(found => found.Place == Place.Plain).ToList();
        if (plain.Count > 1 && !plain.Any(found => found.Measured.Unit is MassUnit && found != plain[0]))
        {
            return Refused("two amounts stand in the line and it is not clear which counts; write one, or put the weight in brackets");
        }

        if (usable is [{ Measured: { Unit: null, Amount: var first }, Place: Place.Plain }, { Place: Place.Joined, IsEach: false } second, ..] && !(first == Amount.One && IsShort(second.Measured.Amount)))
        {
            return Refused("two numbers side by side can be thousands, or so many of each; write one number, as 1200 g, or a times sign, as 2 x 100 g");
        }

        if (chosen.Measured.Amount.High <= 0)
        {
            return Refused("an amount of nothing; leave the line away or give an amount");
        }

        if (chosen.Thousands == ThousandsSign.LostSpace)
        {
            return Refused("a fraction that may have lost a space; write it as 1 1/2 or as 1.5");
        }

        var isFine = chosen.Measured.Unit is MassUnit { Id: "gram" } or VolumeUnit { Id: "millilitre" };
        if (chosen.Thousands == ThousandsSign.Comma && !isFine)
        {
            return Refused("a comma before three digits can be thousands or decimals; write the number without it");
        }

        if (chosen.Thousands == ThousandsSign.Point && isFine)
        {
            return Refused("a point before three digits can be decimals or thousands; write the number without it");
        }

        var assumed = ImmutableArray.CreateBuilder<string>();
        if (chosen.Thousands == ThousandsSign.Comma)
        {
            assumed.Add("a comma before three digits: thousands");
        }

        return Several(usable, chosen, assumed) is { } each
            ? each
            : new MeasureChoice([chosen.Measured, .. JoinedTo(usable, chosen)], assumed.ToImmutable(), null)
            {
                // A weight in brackets is of what is left.
                Less = [.. measures.Where(found => found.Place == Place.Less && chosen.Place == Place.Plain).Select(found => found.Measured)],
            };
    }

    private static MeasureChoice Refused(string problem) => new([], [], problem);

    // One and 8 oz are one of 8 oz; one and 200 g can be 1200 g.
    private static bool IsShort(Amount amount) => amount.High is > 0 and < 100 || !double.IsInteger(amount.High);

    /// <summary>A weight in brackets or a note beside a count: of each, of all together, or not clear.</summary>
    private static MeasureChoice? Several(ImmutableArray<Found> usable, Found chosen, ImmutableArray<string>.Builder assumed)
    {
        if (chosen is { Place: Place.Joined, IsEach: true })
        {
            return new MeasureChoice([chosen.Measured with { Amount = chosen.Measured.Amount * usable[0].Measured.Amount }], [], null);
        }

        if (chosen.Place is not (Place.Bracket or Place.Note) || usable[0].Place is Place.Bracket or Place.Note)
        {
            return null;
        }

        var count = usable[0].Measured;
        if (chosen.IsEach)
        {
            assumed.Add(chosen.Place == Place.Note ? "the weight behind the comma is of each" : "the weight in brackets is of each");
            return new MeasureChoice([chosen.Measured with { Amount = chosen.Measured.Amount * count.Amount }], assumed.ToImmutable(), null);
        }

        if (count.Unit is PieceUnit { IsContainer: true } && count.Amount.High > 1)
        {
            return Refused("the weight beside the count can be of each or of all together; write 'each', or give the weight alone");
        }

        if (count.Unit is not MassUnit && chosen.Place == Place.Bracket)
        {
            assumed.Add(chosen.Measured.Unit is MassUnit ? "the weight in brackets counts" : "the millilitres in brackets count");
        }

        return null;
    }

    // 1 lb 2 oz, 1 cup 2 tbsp: measures of one kind that stand side by side are added up.
    private static IEnumerable<Measured> JoinedTo(ImmutableArray<Found> usable, Found chosen) => usable
        .SkipWhile(found => found != chosen)
        .Skip(1)
        .TakeWhile(found => found.Place == Place.Joined)
        .Where(found => found.Measured.Unit?.GetType() == chosen.Measured.Unit?.GetType() && found.Measured.Unit is not null)
        .Select(found => found.Measured);
}
