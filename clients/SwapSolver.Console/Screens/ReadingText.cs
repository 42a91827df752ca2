using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The figures of a reading: value and band with the same decimals.</summary>
internal sealed class ReadingText
{
    private const int MostDecimals = 6;

    private readonly Reading reading;
    private readonly int decimals;

    /// <summary>Chooses the decimals for one reading.</summary>
    public ReadingText(Reading reading)
    {
        this.reading = reading;
        decimals = DecimalsFor(Math.Max(Math.Abs(reading.Value), Math.Max(Math.Abs(reading.Band?.Low ?? 0), Math.Abs(reading.Band?.High ?? 0))));

        // 0.9199 below a band from 0.92 must not read '0.92, too low'.
        while (decimals < MostDecimals && LooksAtAnEndButIsOutside())
        {
            decimals++;
        }
    }

    /// <summary>The value.</summary>
    public string Value => Write(reading.Value);

    /// <summary>The band in words, as '0.92 to 1.04' or 'at most 3.00'.</summary>
    public string Band => reading.Band switch
    {
        { HasLow: true, HasHigh: true } band when band.Low == band.High => $"{Write(band.Low)} only",
        { HasLow: true, HasHigh: true } band => $"{Write(band.Low)} to {Write(band.High)}",
        { HasLow: true } band => $"at least {Write(band.Low)}",
        { HasHigh: true } band => $"at most {Write(band.High)}",
        _ => "no limit",
    };

    /// <summary>Where the value lies, in a word.</summary>
    public string Standing => reading.Standing switch
    {
        Reading.Types.Standing.Inside => "inside",
        Reading.Types.Standing.Below => "too low",
        Reading.Types.Standing.Above => "too high",
        _ => "",
    };

    private static int DecimalsFor(double size) => size switch
    {
        0 => 0,
        < 1 => 3,
        < 10 => 2,
        < 100 => 1,
        _ => 0,
    };

    private bool LooksAtAnEndButIsOutside() => reading.Standing switch
    {
        Reading.Types.Standing.Below => reading.Band is { HasLow: true } band && Write(band.Low) == Value,
        Reading.Types.Standing.Above => reading.Band is { HasHigh: true } band && Write(band.High) == Value,
        _ => false,
    };

    private string Write(double figure) => figure.ToString($"F{decimals}", CultureInfo.InvariantCulture);
}
