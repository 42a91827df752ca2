using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Lines in grams, with what was assumed and what is not sure.</summary>
internal static class ConvertScreen
{
    /// <summary>Shows the lines.</summary>
    public static void Show(Screen screen, ConvertLinesResponse response)
    {
        var sure = response.Lines.Where(line => line.Problem.Length == 0).ToList();
        if (sure.Count > 0)
        {
            ShowSure(screen, sure);
        }

        var unsure = response.Lines.Where(line => line.Problem.Length > 0).ToList();
        if (unsure.Count > 0)
        {
            ShowUnsure(screen, unsure);
        }
    }

    private static void ShowSure(Screen screen, IReadOnlyList<ConvertedLine> lines)
    {
        screen.Part("In grams");
        if (screen.IsNarrow)
        {
            foreach (var line in lines)
            {
                screen.Item($"{line.Text}: {Amount.Grams(line.Grams)} g of {IngredientName.Id(line.Ingredient)} ({Range(line)} g)");
            }
        }
        else
        {
            var table = new PlainTable().Words("line").Words("ingredient").Figures("grams").Figures("range");
            foreach (var line in lines)
            {
                table.Row(line.Text, IngredientName.Id(line.Ingredient), Amount.Grams(line.Grams), Range(line));
            }

            screen.Table(table);
        }

        var assumed = lines.SelectMany(line => line.Assumed.Select(words => (words, line.Text))).GroupBy(pair => pair.words).ToList();
        if (assumed.Count > 0)
        {
            screen.Part("Assumed");
            foreach (var group in assumed)
            {
                screen.Item($"{group.Key}: {string.Join("; ", group.Select(pair => pair.Text).Distinct())}");
            }
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
            screen.Item($"{line.Text}: {line.Problem}{near}");
        }
    }

    private static string Range(ConvertedLine line) => $"{Amount.Grams(line.LowGrams)} to {Amount.Grams(line.HighGrams)}";
}
