using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Writes the forecast of a bake in the contract's words.</summary>
internal static class BakeWriter
{
    /// <summary>The forecast.</summary>
    public static BakeFormulaResponse Write(Domain.Formula formula, BakeForecast forecast)
    {
        var written = new BakeFormulaResponse
        {
            CoreTargetCelsius = forecast.Target.Value,
            TimeToCoreMinutes = Write(forecast.TimeToCore),
            BakeLossPercent = forecast.Loss.Value.Value,
            BakeLoss = Write(forecast.Loss),
            CoolToSliceMinutes = Write(forecast.CoolToSlice),
            SliceAtCelsius = forecast.SliceAt.Value,
            Fill = Write(forecast.Fill),
            LossWeighed = forecast.IsLossWeighed,
            BoilingPointCelsius = forecast.BoilingPoint.Value,
            Formula = FormulaWriter.Write(formula),
        };
        if (forecast.ProbeFrom is { } probe)
        {
            written.ProbeFromMinute = probe.Value;
        }

        if (forecast.Pace is { } pace)
        {
            written.PacePercent = pace.Value;
        }

        written.Curve.AddRange(forecast.Curve.Select(Write));
        written.Variations.AddRange(forecast.Variations.Select(variation => Write(variation, forecast.TimeToCore!.Value.Value)));
        written.Cautions.AddRange(forecast.Cautions.Select(caution => caution.Text));
        return written;
    }

    /// <summary>The change; null where there is none.</summary>
    public static V1.BakeChange? Write(Forecasts.BakeChange? change)
    {
        if (change is null)
        {
            return null;
        }

        var after = change.After;
        var written = new V1.BakeChange
        {
            BeforeMinutes = Write(change.Before),
            AfterMinutes = Write(after.TimeToCore),
            Ratio = Shares(change.Ratio, 1),
            CoreTargetCelsius = after.Target.Value,
            ProbeFromMinute = after.ProbeFrom?.Value ?? 0,
            CoolToSliceMinutes = Write(after.CoolToSlice),
            Fill = Write(after.Fill),
        };
        written.Cautions.AddRange(after.Cautions.Select(caution => caution.Text));
        return written;
    }

    private static V1.BakeVariation Write(Forecasts.BakeVariation variation, Minutes time) => new()
    {
        DisplayName = variation.What,
        Ratio = Shares(variation.Ratio, 1),
        Minutes = Shares(variation.Ratio, time.Value),
    };

    /// <summary>Shares of so much.</summary>
    private static Estimate Shares(PercentRange range, double of) =>
        new() { Value = range.Value.Share * of, Low = range.Low.Share * of, High = range.High.Share * of };

    private static V1.CorePoint Write(Forecasts.CorePoint point) => new()
    {
        Minute = point.At.Value,
        CoreCelsius = point.Core.Value,
        Stage = point.Stage == BakeStage.Oven ? V1.CorePoint.Types.Stage.Oven : V1.CorePoint.Types.Stage.Rack,
    };

    private static V1.TinFill? Write(Forecasts.TinFill? fill)
    {
        if (fill is null)
        {
            return null;
        }

        var written = new V1.TinFill
        {
            BatterMm = Write(fill.Batter),
            BakedMm = Write(fill.Baked),
            FullPercent = Write(fill.Full),
            Standing = fill.Standing switch
            {
                FillStanding.Overflows => V1.TinFill.Types.Standing.Overflows,
                FillStanding.MayOverflow => V1.TinFill.Types.Standing.MayOverflow,
                _ => V1.TinFill.Types.Standing.Fits,
            },
        };
        written.Nearest.AddRange(fill.Nearest.Select(choice => new StandardTin
        {
            DisplayName = choice.Tin.Name,
            Tin = new Tin { LengthMm = choice.Tin.Tin.Length.Value, WidthMm = choice.Tin.Tin.Width.Value, HeightMm = choice.Tin.Tin.Height.Value },
            FullPercent = choice.Full.Value,
        }));
        return written;
    }

    private static Estimate? Write(MinuteRange? range) => range is { } minutes
        ? new Estimate { Value = minutes.Value.Value, Low = minutes.Low.Value, High = minutes.High.Value }
        : null;

    private static Estimate Write(PercentRange range) => new() { Value = range.Value.Value, Low = range.Low.Value, High = range.High.Value };

    private static Estimate Write(MillimetreRange range) => new() { Value = range.Value.Value, Low = range.Low.Value, High = range.High.Value };
}
