using SwapSolver.Kitchen.Balances;
using Reading = SwapSolver.Solving.Answers.Reading;

namespace SwapSolver.Service.Translation;

/// <summary>Writes readings in the contract's words.</summary>
internal static class ReadingWriter
{
    /// <summary>The reading.</summary>
    public static V1.Reading Write(Reading reading)
    {
        var written = new V1.Reading
        {
            Balance = reading.Balance.Id,
            Value = reading.Value.Value,
            Low = reading.Low.Value,
            High = reading.High.Value,
            Standing = reading.Standing switch
            {
                Standing.Below => V1.Reading.Types.Standing.Below,
                Standing.Above => V1.Reading.Types.Standing.Above,
                _ => V1.Reading.Types.Standing.Inside,
            },
            Unit = reading.Balance.Settings.Unit,
            Title = reading.Balance.Settings.Title,
            Meaning = reading.Meaning,
        };
        if (!reading.Band.IsOpen)
        {
            written.Band = Write(reading.Band);
        }

        return written;
    }

    private static V1.Band Write(Band band)
    {
        var written = new V1.Band();
        if (band.Low is { } low)
        {
            written.Low = low.Value;
        }

        if (band.High is { } high)
        {
            written.High = high.Value;
        }

        return written;
    }
}
