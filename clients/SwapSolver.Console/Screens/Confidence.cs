using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>How sure an answer is and where it has no room left, in sentences.</summary>
internal static class Confidence
{
    /// <summary>Shows the chance that the formula balances, the readings at their ends, and the notes.</summary>
    public static void Show(Screen screen, Answer answer)
    {
        screen.Gap();
        screen.Sentence($"Balances in {Kitchens(answer.ChanceOfBalance)} of 100 kitchens, as ingredients vary.");
        if (answer.Decisive.Count > 0)
        {
            screen.Sentence("What decides it most:");
        }

        foreach (var fact in answer.Decisive)
        {
            screen.Item(fact.Words);
        }

        // What the table above does not show is not named here either.
        var binding = answer.Readings.Where(reading => answer.Binding.Contains(reading.Balance) && ReadingBars.TellsSomething(reading)).ToList();
        if (binding.Count > 0)
        {
            var titles = binding.Select(ReadingTitle.Of);
            var bands = binding.Count == 1 ? "its band" : "their bands";
            screen.Sentence($"Near an end of {bands}, with little room left: {string.Join(", ", titles)}.");
        }

        foreach (var slack in answer.Slack)
        {
            screen.Sentence(slack.Words);
        }

        if (answer.BestSoFar)
        {
            screen.Sentence("The time ran out before this was proven the best.");
        }

        foreach (var note in answer.Notes)
        {
            screen.Sentence($"Note: {note}");
        }
    }

    // Neither end is printed unless it is meant: 99.6 is not 'all', 0.4 is not 'none'.
    private static string Kitchens(double chance) => (chance * 100) switch
    {
        >= 100 => "100",
        > 99 => "99",
        > 0 and < 1 => "fewer than 1",
        var kitchens => kitchens.ToString("0", CultureInfo.InvariantCulture),
    };
}
