using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Lines in grams, with what was assumed and what is not sure.</summary>
internal static class ConvertScreen
{
    /// <summary>Shows the lines.</summary>
    public static void Show(Screen screen, ConvertLinesResponse response)
    {
        var sure = response.Lines.Where(line => line.Problem.Length == 0).ToList();
        LinesRead.Show(screen, sure, "In grams");
        var unsure = response.Lines.Where(line => line.Problem.Length > 0).ToList();
        if (unsure.Count > 0)
        {
            ShowUnsure(screen, unsure);
        }
    }

    private static void ShowUnsure(Screen screen, IReadOnlyList<ConvertedLine> lines)
    {
        screen.Part("Not read");
        foreach (var line in lines)
        {
            var near = line.Candidates.Count == 0
                ? ""
                : $"; did you mean {string.Join(", ", line.Candidates.Select(candidate => FormattableString.Invariant($"{IngredientName.Id(candidate.Ingredient)} ({candidate.Score:0.00})")))}?";
            screen.Item($"{line.Text.TrimEnd(':')}: {line.Problem}{near}");
        }
    }
}
