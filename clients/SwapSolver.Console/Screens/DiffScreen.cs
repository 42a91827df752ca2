using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What changed from one revision to another.</summary>
internal static class DiffScreen
{
    /// <summary>Shows lines, readings, nutrition by slice, and goals.</summary>
    public static void Show(Screen screen, DiffRevisionsResponse response)
    {
        screen.Heading($"{response.Before.DisplayName} to {response.After.DisplayName}");
        if (response.Lines.Count == 0)
        {
            screen.Sentence("The lines are the same.");
        }
        else
        {
            screen.Part("Lines");
            screen.Table(Table("grams", response.Lines.Select(line => Row(line.DisplayName, line.HasBeforeGrams ? line.BeforeGrams : (double?)null, line.HasAfterGrams ? line.AfterGrams : null))));
        }

        screen.Part("Readings");
        screen.Table(Table(
            "reading",
            response.Readings.Where(reading => !reading.HasBefore || !reading.HasAfter || Math.Abs(reading.Before - reading.After) > 5e-4)
                .Select(reading => Row($"{reading.Title} [{reading.Unit}]", reading.HasBefore ? reading.Before : (double?)null, reading.HasAfter ? reading.After : null))));
        screen.Part("A slice");
        screen.Table(Table("", Slice(response.NutritionBefore.PerSlice, response.NutritionAfter.PerSlice)));
        foreach (var goal in response.Goals)
        {
            screen.Part($"Goal {goal.Goal}: {Word(goal.Standing)}");
            foreach (var words in goal.Words)
            {
                screen.Item(words);
            }
        }
    }

    private static (string What, double? Before, double? After) Row(string what, double? before, double? after) => (what, before, after);

    private static IEnumerable<(string, double?, double?)> Slice(NutritionFacts before, NutritionFacts after)
    {
        yield return ("mass, baked [g]", before.MassG, after.MassG);
        yield return ("energy [kcal]", before.EnergyKcal, after.EnergyKcal);
        if (before.HasNetCarbsG && after.HasNetCarbsG)
        {
            yield return ("net carbs [g]", before.NetCarbsG, after.NetCarbsG);
        }

        yield return ("protein [g]", before.ProteinG, after.ProteinG);
        yield return ("fat [g]", before.FatG, after.FatG);
        if (before.HasSodiumMg && after.HasSodiumMg)
        {
            yield return ("sodium [mg]", before.SodiumMg, after.SodiumMg);
        }
    }

    private static PlainTable Table(string what, IEnumerable<(string What, double? Before, double? After)> rows)
    {
        var table = new PlainTable().Words(what).Figures("before").Figures("after");
        foreach (var (name, before, after) in rows)
        {
            table.Row(name, Number(before), Number(after));
        }

        return table;
    }

    private static string Number(double? figure) => figure?.ToString("0.##", CultureInfo.InvariantCulture) ?? "-";

    private static string Word(GoalProgress.Types.Standing standing) => standing switch
    {
        GoalProgress.Types.Standing.Reached => "reached",
        GoalProgress.Types.Standing.Nearer => "nearer",
        GoalProgress.Types.Standing.Unmoved => "not moved",
        GoalProgress.Types.Standing.Farther => "farther away",
        _ => "it names no reading, so nothing can be said",
    };
}
