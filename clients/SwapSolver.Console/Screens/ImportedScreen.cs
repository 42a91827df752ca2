using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What became of a table.</summary>
internal static class ImportedScreen
{
    private const int MostShown = 50;

    /// <summary>Shows how many rows went in, and why the others did not.</summary>
    public static void Show(Screen screen, ImportIngredientsResponse response, bool isWritten)
    {
        screen.Heading(isWritten ? "Taken in" : "A dry run; nothing was written down");
        screen.Item($"New: {response.Added}. With other figures than before: {response.Changed}. There already, to the digit: {response.Same}. Left out: {response.LeftOut}.");
        if (response.Problems.Count > 0)
        {
            screen.Part("Left out, by line of the table");
        }

        foreach (var problem in response.Problems.Take(MostShown))
        {
            screen.Item(Say(problem));
        }

        if (response.Problems.Count > MostShown)
        {
            screen.Item($"and {response.Problems.Count - MostShown} more; --json lists them.");
        }

        Cautions.Show(screen, response.Cautions);
    }

    private static string Say(RowProblem problem)
    {
        var field = problem.Field.Length == 0 ? string.Empty : $"{problem.Field}: ";
        var value = problem.Value.Length == 0 ? string.Empty : $"'{problem.Value}' ";
        return $"line {problem.Line}: {field}{value}{problem.Reason}; {problem.WayOut}";
    }
}
