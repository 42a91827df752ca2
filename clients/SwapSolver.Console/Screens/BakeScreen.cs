using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How a formula bakes and cools.</summary>
internal static class BakeScreen
{
    /// <summary>Shows the window, what follows from it, the core and the tin, and the cautions.</summary>
    public static void Show(Screen screen, BakeFormulaResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        screen.Heading(Window(response));
        BakeLine.Show(screen, response.Formula);
        if (response.TimeToCoreMinutes is not null)
        {
            screen.Sentence($"Probe the core from minute {Whole(response.ProbeFromMinute)}; it is done at {Tenth(response.CoreTargetCelsius)} °C.");
            var loss = $"({Tenth(response.BakeLoss.Low)} to {Tenth(response.BakeLoss.High)})";
            screen.Sentence($"It loses about {Tenth(response.BakeLoss.Value)} % in the oven {loss}{(response.LossWeighed ? "" : "; weigh a bake and state its loss, and the range narrows")}.");
            if (response.CoolToSliceMinutes is { } cooling)
            {
                screen.Sentence($"On a rack, out of its tin, it may be sliced after {Range(cooling)} minutes, at {Whole(response.SliceAtCelsius)} °C.");
            }
        }

        if (response.AnchorTrial.Length > 0)
        {
            screen.Sentence($"Held against this kitchen's own bakes, as {response.AnchorTrial}.");
        }

        if (response.HasPacePercent)
        {
            screen.Sentence($"By the known bake heat goes in, in this kitchen, at {Whole(response.PacePercent)} % of the pace that handbooks expect.");
        }

        screen.Sentence($"Water boils at {Tenth(response.BoilingPointCelsius)} °C here.");
        CoreCurve.Show(screen, response.Curve);
        TinLines.Show(screen, response.Fill);
        BakeVariationTable.Show(screen, response.Variations);
        Cautions.Show(screen, response.Cautions);
    }

    /// <summary>A range of minutes, as '62 (44 to 88)'.</summary>
    public static string Range(Estimate minutes) => $"{Whole(minutes.Value)} ({Whole(minutes.Low)} to {Whole(minutes.High)})";

    private static string Window(BakeFormulaResponse response) => response.TimeToCoreMinutes is { } time
        ? $"{Range(time)} minutes to a core of {Tenth(response.CoreTargetCelsius)} °C."
        : $"The core does not come to {Tenth(response.CoreTargetCelsius)} °C in this oven.";

    private static string Whole(double figure) => figure.ToString("0", CultureInfo.InvariantCulture);

    private static string Tenth(double figure) => figure.ToString("0.#", CultureInfo.InvariantCulture);
}
