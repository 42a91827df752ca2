using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How a batter fills its tin.</summary>
internal static class TinLines
{
    /// <summary>Shows the filling; nothing where there is no tin.</summary>
    public static void Show(Screen screen, TinFill? fill)
    {
        if (fill is null)
        {
            return;
        }

        screen.Part("The tin");
        screen.Item($"the batter stands {Whole(fill.BatterMm.Value)} mm high, the baked loaf {Whole(fill.BakedMm.Value)} mm ({Whole(fill.BakedMm.Low)} to {Whole(fill.BakedMm.High)}), {Whole(fill.FullPercent.Value)} % of the tin");
        if (fill.Nearest.Count > 0)
        {
            screen.Item($"would fill well: {string.Join("; ", fill.Nearest.Select(tin => $"{tin.DisplayName} ({Whole(tin.FullPercent)} %)"))}");
        }
    }

    private static string Whole(double figure) => figure.ToString("0", CultureInfo.InvariantCulture);
}
