using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How a formula rises.</summary>
internal static class RiseScreen
{
    /// <summary>Shows the window and the pH, the curve, what the height does, and the cautions.</summary>
    public static void Show(Screen screen, PredictRiseResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        screen.Heading(Window(response));
        Show(screen, "pH of the batter", response.PhBatter, "0.0");
        Show(screen, "pH of the crumb", response.PhCrumb, "0.0");
        Show(screen, "Soda that acid uses up, %", response.NeutralisedPercent, "0");
        Show(screen, "Soda left in 100 g of crumb, g", response.SodaLeft, "0.00");
        if (response.Salty)
        {
            screen.Sentence("The water is saltier than the pH is worked out for: take it as a rougher figure.");
        }

        GasCurve.Show(screen, response.Gas);
        Gas(screen, response);
        Height(screen, response);
        Cautions.Show(screen, response.Cautions);
    }

    private static string Window(PredictRiseResponse response) => response.HasWorkingWindowMinutes
        ? $"Into the oven within about {Write(response.WorkingWindowMinutes, "0.#")} minutes of mixing ({Write(response.WorkingWindow.Low, "0.#")} to {Write(response.WorkingWindow.High, "0.#")})."
        : "No gas of soda or powder.";

    private static void Show(Screen screen, string title, Estimate? figure, string format)
    {
        if (figure is not null)
        {
            screen.Sentence($"{title}: {Write(figure.Value, format)} ({Write(figure.Low, format)} to {Write(figure.High, format)})");
        }
    }

    private static void Gas(Screen screen, PredictRiseResponse response)
    {
        if (response.VolumeAtBowlMillilitres <= 0)
        {
            return;
        }

        var freed = response.Freed;
        var total = freed.InMixingMmol + freed.OnBenchMmol + freed.InOvenMmol + freed.ByHeatMmol;
        string Share(double part) => $"{Write(100 * part / total, "0")} %";
        screen.Gap();
        screen.Sentence(
            $"Of the gas {Share(freed.InMixingMmol)} comes while mixing, {Share(freed.OnBenchMmol)} on the bench, {Share(freed.InOvenMmol)} by acid in the oven and {Share(freed.ByHeatMmol)} by heat alone.");
        screen.Sentence(
            $"All of it fills {Write(response.VolumeAtBowlMillilitres, "0")} mL in the bowl and {Write(response.VolumeAtSettingMillilitres, "0")} mL where the crumb sets; the wait loses {Write(response.LostOnBenchPercent, "0")} %.");
    }

    private static void Height(Screen screen, PredictRiseResponse response)
    {
        screen.Sentence($"Air pressure {Write(response.PressureHpa, "0")} hPa; water boils at {Write(response.BoilingPointCelsius, "0.0")} °C.");
        Show(screen, "Less soda and powder at this height, %", response.LeaveningCutPercent, "0");
    }

    private static string Write(double figure, string format) => figure.ToString(format, CultureInfo.InvariantCulture);
}
