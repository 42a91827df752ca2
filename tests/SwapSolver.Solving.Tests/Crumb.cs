using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Solving.Tests;

/// <summary>The default bands as the trade page of this project states them, judged by <see cref="Tally"/> alone.</summary>
internal static class Crumb
{
    /// <summary>Room for the rounding of published figures to four digits, beside molar masses that carry six.</summary>
    private const double Rounding = 2e-4;

    /// <summary>What is out of its band in a loaf made after another; empty where every rule of the crumb is kept.</summary>
    /// <param name="reference">The loaf that is known to work.</param>
    /// <param name="loaf">The loaf made after it.</param>
    /// <param name="strictLeavening">Whether the reference's own leavening excuses nothing.</param>
    public static IEnumerable<string> Faults(Formula reference, Formula loaf, bool strictLeavening = false)
    {
        var (before, after) = (new Tally(reference), new Tally(loaf));
        return
        [
            .. Around("hydration", before.Hydration, after.Hydration, 0.94, 1.06, double.PositiveInfinity),
            .. Around("gas", before.Gas, after.Gas, 0.90, 1.10, double.PositiveInfinity),
            .. Around("setting protein", before.SettingProtein, after.SettingProtein, 0.90, 1.10, 0.01),
            .. Around("gel", before.Gel, after.Gel, 0.90, 1.10, 0.004),
            .. Around("richness", before.Richness, after.Richness, 0.85, 1.15, 0.02),
            .. Leavening(strictLeavening ? double.NaN : before.Leavening, after.Leavening),
        ];
    }

    private static IEnumerable<string> Leavening(double before, double after)
    {
        // Without base there is no ratio. A reference outside 0.90 to 1.05 may stay as far out as it is.
        if (double.IsFinite(after))
        {
            var low = double.IsFinite(before) ? Math.Min(0.90, before) : 0.90;
            var high = double.IsFinite(before) ? Math.Max(1.05, before) : 1.05;
            return Inside("leavening", after, low, high);
        }

        return [];
    }

    private static IEnumerable<string> Around(string rule, double before, double after, double below, double above, double whenNone) =>
        double.IsNaN(before) || double.IsNaN(after) ? []
        : before == 0 ? Inside(rule, after, 0, whenNone)
        : Inside(rule, after, before * below, before * above);

    private static IEnumerable<string> Inside(string rule, double value, double low, double high) =>
        value < low * (1 - Rounding) || value > high * (1 + Rounding) ? [$"{rule} {value:G5} not in {low:G5}..{high:G5}"] : [];
}
