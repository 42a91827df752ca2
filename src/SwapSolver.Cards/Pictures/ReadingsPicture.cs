using System.Collections.Immutable;
using System.Xml.Linq;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Cards.Pictures;

/// <summary>The readings of a formula against their bands. The band is a box in outline, what the reading may be is a line
/// through it, and the reading itself a diamond; whether it lies inside is written out.</summary>
/// <param name="Words">Numbers and words.</param>
internal sealed record ReadingsPicture(CardWords Words)
{
    private const double RowHeight = 58, Left = 10, BoxLeft = 110, BoxRight = 230, Right = Pen.Width - 10, BoxHeight = 14, Half = 6;

    /// <summary>The picture; null where no reading has a band.</summary>
    public Picture? Of(ImmutableArray<Reading> readings)
    {
        ImmutableArray<Reading> shown = [.. readings.Where(reading => reading.Band is { Low: not null, High: not null })];
        return shown.IsEmpty ? null : new Picture(
            Words.Say("picture-readings"),
            Pen.Sheet((shown.Length * RowHeight) + 6, "picture-readings", Words.Say("picture-readings"), shown.SelectMany(Draw)),
            [Words.Say("picture-reading"), Words.Say("picture-value"), Words.Say("picture-band"), Words.Say("picture-standing")],
            [.. shown.Select(reading => ImmutableArray.Create(TitleOf(reading), Level(reading.Value), BandOf(reading), StandingOf(reading)))]);
    }

    private IEnumerable<XElement> Draw(Reading reading, int row)
    {
        var top = row * RowHeight;
        var middle = top + 28;
        var (low, high) = (reading.Band.Low!.Value.Value, reading.Band.High!.Value.Value);
        double X(Level level) => high > low
            ? Math.Clamp(BoxLeft + ((level.Value - low) / (high - low) * (BoxRight - BoxLeft)), Left, Right)
            : level.Value < low ? Left : level.Value > high ? Right : (BoxLeft + BoxRight) / 2;

        return
        [
            Pen.Text(Left, top + 14, Words.Say("picture-row", ("title", TitleOf(reading)), ("value", Level(reading.Value)), ("standing", StandingOf(reading)))),
            Pen.Box(BoxLeft, middle - (BoxHeight / 2), BoxRight - BoxLeft, BoxHeight, filled: false),
            Pen.Line(X(reading.Low), middle, X(reading.High), middle),
            Pen.Diamond(X(reading.Value), middle, Half),
            // Below the box, where the line of what the reading may be does not cross them.
            Pen.Text(BoxLeft, middle + 20, Level(reading.Band.Low!.Value)),
            Pen.Text(BoxRight, middle + 20, Level(reading.Band.High!.Value), atEnd: true),
        ];
    }

    private static string TitleOf(Reading reading) => reading.Balance.Settings.Title;

    private string BandOf(Reading reading) => Words.Say("picture-range", ("low", Level(reading.Band.Low!.Value)), ("high", Level(reading.Band.High!.Value)));

    private string StandingOf(Reading reading) => Words.Say(reading.Standing switch
    {
        Standing.Below => "standing-below",
        Standing.Above => "standing-above",
        _ => "standing-inside",
    });

    private string Level(Level level) => Words.Number(level.Value, Math.Abs(level.Value) switch
    {
        >= 100 => "0",
        >= 10 => "0.#",
        >= 1 => "0.##",
        _ => "0.###",
    });
}
