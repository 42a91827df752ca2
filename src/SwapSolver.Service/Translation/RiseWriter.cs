using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.V1;
using GasPoint = SwapSolver.V1.GasPoint;

namespace SwapSolver.Service.Translation;

/// <summary>Writes the forecast of a rise in the contract's words.</summary>
internal static class RiseWriter
{
    private const double PascalsOfHectopascal = 100;

    /// <summary>The forecast.</summary>
    public static PredictRiseResponse Write(RiseForecast forecast)
    {
        var written = new PredictRiseResponse
        {
            PhBatter = Write(forecast.Acidity?.Batter),
            PhCrumb = Write(forecast.Acidity?.Crumb),
            SodaLeftGramsPer100G = forecast.SodaLeftPer100Grams.Typical.Value,
            SodaLeft = new Estimate
            {
                Value = forecast.SodaLeftPer100Grams.Typical.Value,
                Low = forecast.SodaLeftPer100Grams.Low.Value,
                High = forecast.SodaLeftPer100Grams.High.Value,
            },
            NeutralisedPercent = Write(forecast.Neutralised),
            Freed = new V1.FreedGas
            {
                InMixingMmol = forecast.Freed.InMixing.Value,
                OnBenchMmol = forecast.Freed.OnBench.Value,
                InOvenMmol = forecast.Freed.InOven.Value,
                ByHeatMmol = forecast.Freed.ByHeat.Value,
            },
            VolumeAtBowlMillilitres = forecast.VolumeAtBowl.Value,
            VolumeAtSettingMillilitres = forecast.VolumeAtSetting.Value,
            LostOnBenchPercent = forecast.LostOnBench.Value,
            PressureHpa = forecast.Pressure.Value / PascalsOfHectopascal,
            BoilingPointCelsius = forecast.BoilingPoint.Value,
            LeaveningCutPercent = Write(forecast.LeaveningCut),
            Salty = forecast.Acidity?.IsSalty ?? false,
        };
        if (forecast.WorkingWindow is { } window)
        {
            written.WorkingWindowMinutes = window.Value.Value;
            written.WorkingWindow = new Estimate { Value = window.Value.Value, Low = window.Low.Value, High = window.High.Value };
        }

        written.Gas.AddRange(forecast.Gas.Select(point => new GasPoint
        {
            Minute = point.At.Value,
            Millilitres = point.Freed.Value,
            HeldMillilitres = point.Held.Value,
            Stage = point.Stage switch
            {
                RiseStage.Mixing => GasPoint.Types.Stage.Mixing,
                RiseStage.Bench => GasPoint.Types.Stage.Bench,
                _ => GasPoint.Types.Stage.Oven,
            },
        }));
        written.Cautions.AddRange(forecast.Cautions.Select(caution => caution.Text));
        return written;
    }

    private static Estimate? Write(PhRange? range) => range is { } ph
        ? new Estimate { Value = ph.Value.Value, Low = ph.Low.Value, High = ph.High.Value }
        : null;

    private static Estimate? Write(PercentRange? range) => range is { } percent
        ? new Estimate { Value = percent.Value.Value, Low = percent.Low.Value, High = percent.High.Value }
        : null;
}
