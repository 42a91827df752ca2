using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>A reading drawn against its band. Every band takes the middle half, so that a column of bars is read at a glance.</summary>
internal static class ReadingBar
{
    /// <summary>The key to the signs.</summary>
    public const string Key = "[====] is the band, * the value, ~ where it may lie as the facts vary.";

    /// <summary>The same, where lines of the formula were not weighed.</summary>
    public const string KeyWithMeasures = "[====] is the band, * the value, ~ where it may lie as the facts vary, and spoons and cups.";

    private const int Cells = 24;
    private const int LowCell = 6;
    private const int HighCell = 17;

    /// <summary>Draws one reading; empty where nothing limits it.</summary>
    public static string Draw(Reading reading)
    {
        var band = reading.Band;
        if (band is null || (!band.HasLow && !band.HasHigh))
        {
            return "";
        }

        var bar = new char[Cells];
        for (var cell = 0; cell < Cells; cell++)
        {
            bar[cell] = Ground(band, cell);
        }

        for (var cell = CellOf(band, reading.Low); cell <= CellOf(band, reading.High); cell++)
        {
            bar[cell] = bar[cell] is '=' or '.' ? '~' : bar[cell];
        }

        bar[Honest(CellOf(band, reading.Value), reading.Standing)] = '*';
        return new string(bar);
    }

    private static char Ground(Band band, int cell) => cell switch
    {
        < LowCell when band.HasLow => '.',
        > HighCell when band.HasHigh => '.',
        LowCell when band.HasLow => '[',
        HighCell when band.HasHigh => ']',
        _ => '=',
    };

    // What lies off the bar is drawn at its end: the figure beside it says how far.
    private static int CellOf(Band band, double value)
    {
        var (low, high) = Ends(band);
        var cell = high > low
            ? LowCell + ((value - low) / (high - low) * (HighCell - LowCell))
            : value.CompareTo(low) switch { 0 => (LowCell + HighCell) / 2, < 0 => 0, _ => Cells - 1 };
        return double.IsNaN(cell) ? 0 : (int)Math.Clamp(Math.Round(cell), 0, Cells - 1);
    }

    // An open side gets a width to draw by: the distance of the other end from 0, or 1 where that is 0.
    private static (double Low, double High) Ends(Band band)
    {
        var known = band.HasHigh ? band.High : band.Low;
        var width = known == 0 ? 1 : Math.Abs(known);
        return (band.HasLow ? band.Low : known - width, band.HasHigh ? band.High : known + width);
    }

    // A value just outside rounds onto the end of the band; the sign must not contradict the word.
    private static int Honest(int cell, Reading.Types.Standing standing) => standing switch
    {
        Reading.Types.Standing.Below => Math.Min(cell, LowCell - 1),
        Reading.Types.Standing.Above => Math.Max(cell, HighCell + 1),
        _ => cell,
    };
}
