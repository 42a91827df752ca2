using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Gas against time as plain text: a row a moment, a bar of what the batter holds and of what has escaped.</summary>
internal static class GasCurve
{
    private const int Cells = 40;

    // More rows than a screen has would hide the curve.
    private const int MostOvenRows = 6;

    /// <summary>The key to the signs.</summary>
    public const string Key = "# is gas that the batter holds, . gas that was freed and has escaped.";

    /// <summary>Shows the curve; nothing where there is no gas.</summary>
    public static void Show(Screen screen, IReadOnlyList<GasPoint> gas)
    {
        var most = gas.Select(point => point.Millilitres).DefaultIfEmpty(0).Max();
        if (most <= 0)
        {
            return;
        }

        screen.Part("Gas against time");
        if (screen.IsNarrow)
        {
            foreach (var point in Picked(gas))
            {
                screen.Item($"minute {Minute(point)}, {Stage(point)}: {Millilitres(point.Millilitres)} mL freed, {Millilitres(point.HeldMillilitres)} mL held");
            }

            return;
        }

        var table = new PlainTable().Figures("minute").Marks("").Marks("").Figures("freed, mL").Figures("held, mL");
        foreach (var point in Picked(gas))
        {
            table.Row(Minute(point), Stage(point), Bar(point, most), Millilitres(point.Millilitres), Millilitres(point.HeldMillilitres));
        }

        screen.Table(table);
        screen.Item(Key);
    }

    /// <summary>Draws one moment.</summary>
    public static string Bar(GasPoint point, double most)
    {
        var held = (int)Math.Round(Cells * point.HeldMillilitres / most);
        var freed = Math.Max(held, (int)Math.Round(Cells * point.Millilitres / most));
        return new string('#', held) + new string('.', freed - held);
    }

    // Every moment of bowl and bench, and so many of the oven that the curve fits a screen; its end is always shown.
    private static IEnumerable<GasPoint> Picked(IReadOnlyList<GasPoint> gas)
    {
        var oven = gas.Where(point => point.Stage == GasPoint.Types.Stage.Oven).ToList();
        var step = Math.Max(1, (int)Math.Ceiling(oven.Count / (double)MostOvenRows));
        var bench = gas.Except(oven).ToList();
        var benchStep = Math.Max(1, (int)Math.Ceiling(bench.Count / 12.0));
        return bench.Where((_, place) => place % benchStep == 0 || place == bench.Count - 1)
            .Concat(oven.Where((_, place) => (oven.Count - 1 - place) % step == 0));
    }

    private static string Stage(GasPoint point) => point.Stage switch
    {
        GasPoint.Types.Stage.Mixing => "mixing",
        GasPoint.Types.Stage.Bench => "bench",
        GasPoint.Types.Stage.Oven => "oven",
        _ => "",
    };

    private static string Minute(GasPoint point) => point.Minute.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Millilitres(double volume) => volume.ToString("0", CultureInfo.InvariantCulture);
}
