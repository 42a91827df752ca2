using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The core against time as plain text: a row a moment, a bar as long as it is warm.</summary>
internal static class CoreCurve
{
    private const int Cells = 50;

    // The bar ends at the boiling point of the sea.
    private const double FullBar = 100;

    // More rows than a screen has would hide the curve.
    private const int MostOvenRows = 14, MostRackRows = 8;

    /// <summary>Shows the curve; nothing where there is none.</summary>
    public static void Show(Screen screen, IReadOnlyList<CorePoint> curve)
    {
        if (curve.Count == 0)
        {
            return;
        }

        screen.Part("The core against time");
        if (screen.IsNarrow)
        {
            foreach (var point in Picked(curve))
            {
                screen.Item($"minute {Whole(point.Minute)}, {Stage(point)}: {Whole(point.CoreCelsius)} °C");
            }

            return;
        }

        var table = new PlainTable().Figures("minute").Marks("").Figures("°C").Marks("");
        foreach (var point in Picked(curve))
        {
            table.Row(Whole(point.Minute), Stage(point), Whole(point.CoreCelsius), Bar(point));
        }

        screen.Table(table);
    }

    /// <summary>Draws one moment.</summary>
    public static string Bar(CorePoint point) =>
        new(point.Stage == CorePoint.Types.Stage.Rack ? '-' : '#', (int)Math.Clamp(Math.Round(Cells * point.CoreCelsius / FullBar), 0, Cells));

    // So many of each place that the curve fits a screen; their ends are always shown.
    private static IEnumerable<CorePoint> Picked(IReadOnlyList<CorePoint> curve)
    {
        var oven = curve.Where(point => point.Stage == CorePoint.Types.Stage.Oven).ToList();
        var rack = curve.Except(oven).ToList();
        return Every(oven, MostOvenRows).Concat(Every(rack, MostRackRows));
    }

    private static IEnumerable<CorePoint> Every(List<CorePoint> points, int most)
    {
        var step = Math.Max(1, (int)Math.Ceiling(points.Count / (double)most));
        return points.Where((_, place) => (points.Count - 1 - place) % step == 0);
    }

    private static string Stage(CorePoint point) => point.Stage == CorePoint.Types.Stage.Rack ? "rack" : "oven";

    private static string Whole(double figure) => figure.ToString("0", CultureInfo.InvariantCulture);
}
