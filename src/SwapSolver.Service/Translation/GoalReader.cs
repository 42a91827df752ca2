using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Standing = SwapSolver.V1.GoalProgress.Types.Standing;

namespace SwapSolver.Service.Translation;

/// <summary>Tells how a goal fared from one formula to another: a word of bakers ('softer'), a reading with its range
/// ('net-carbohydrate=..2.5'), or the slices ('slices=16', 'slices=+2').</summary>
internal sealed partial class GoalReader(Bakehouse bakehouse, Domain.Formula before, Domain.Formula after)
{
    private const double Nothing = 1e-6;

    /// <summary>A reading with typical facts; null where the formula has none. What is weighed against a reference is weighed
    /// against the first; everything else is the formula's own, its slices too.</summary>
    public static double? ReadingOf(Balance balance, Domain.Formula formula, Domain.Formula first) => balance.CanRead(formula) && balance.CanRead(first)
        ? balance.Read(formula, balance is RoleMass or BatterMass ? first : formula, Draws.Typical)?.Value
        : null;

    /// <summary>How it fared.</summary>
    public GoalProgress Read(string goal)
    {
        var aims = AimsOf(goal);
        var progress = new GoalProgress { Goal = goal, Standing = aims.Count == 0 ? Standing.NotRead : Overall(aims) };
        progress.Words.AddRange(aims.Select(aim => string.Create(
            CultureInfo.InvariantCulture, $"{aim.Title}: {aim.Was:0.###} to {aim.Now:0.###}, wanted {Wanted(aim)}")));
        return progress;
    }

    private static string Wanted(GoalAim aim) => (aim.Low, aim.High) switch
    {
        ({ } low, { } high) => string.Create(CultureInfo.InvariantCulture, $"{low:0.###} to {high:0.###}"),
        ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"{low:0.###} or more"),
        (null, { } high) => string.Create(CultureInfo.InvariantCulture, $"{high:0.###} or less"),
        _ => "anything",
    };

    private static Standing Overall(List<GoalAim> aims) =>
        aims.All(aim => aim.MissedNow <= Nothing) ? Standing.Reached
        : aims.Any(aim => aim.MissedNow > aim.MissedBefore + Nothing) ? Standing.Farther
        : aims.Any(aim => aim.MissedNow < aim.MissedBefore - Nothing) ? Standing.Nearer
        : Standing.Unmoved;

    private List<GoalAim> AimsOf(string goal)
    {
        if (bakehouse.Goals.Find(goal) is { } word)
        {
            return [.. word.Aims.Select(aim => Aim(aim.Balance, own => own * aim.Share.Low?.Share, own => own * aim.Share.High?.Share)).OfType<GoalAim>()];
        }

        if (Slices().Match(goal) is { Success: true } slices)
        {
            var figure = int.Parse(slices.Groups[2].Value, CultureInfo.InvariantCulture);
            var wanted = slices.Groups[1].Value switch { "+" => before.Slices + figure, "-" => before.Slices - figure, _ => figure };
            return [new GoalAim("slices", before.Slices, after.Slices, wanted, wanted)];
        }

        if (Range().Match(goal) is { Success: true } range && bakehouse.Balances.Find(range.Groups[1].Value) is { } balance)
        {
            return Aim(balance, _ => Figure(range.Groups[2].Value), _ => Figure(range.Groups[3].Value)) is { } aim ? [aim] : [];
        }

        return [];
    }

    private GoalAim? Aim(Balance balance, Func<double, double?> low, Func<double, double?> high) =>
        ReadingOf(balance, before, before) is { } was && ReadingOf(balance, after, before) is { } now
            ? new GoalAim(balance.Settings.Title, was, now, low(was), high(was))
            : null;

    private static double? Figure(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure) ? figure : null;

    [GeneratedRegex(@"^slices\s*=\s*([+-]?)(\d{1,4})$")]
    private static partial Regex Slices();

    [GeneratedRegex(@"^([a-z-]+)\s*=\s*([0-9.]*)\.\.([0-9.]*)$")]
    private static partial Regex Range();

    /// <summary>One reading that a goal moves.</summary>
    private sealed record GoalAim(string Title, double Was, double Now, double? Low, double? High)
    {
        public double MissedBefore => Missed(Was);

        public double MissedNow => Missed(Now);

        private double Missed(double value) => Math.Max(0, Math.Max((Low - value) ?? 0, (value - High) ?? 0));
    }
}
