using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What lines were read as, in grams, and what was assumed.</summary>
internal static class LinesRead
{
    /// <summary>Shows the lines; nothing where there are none.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<ConvertedLine> lines, string title = "Lines that gave no grams, read as")
    {
        if (lines.Count == 0)
        {
            return;
        }

        screen.Part(title);
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

    private static string Range(ConvertedLine line) => $"{Amount.Grams(line.LowGrams)} to {Amount.Grams(line.HighGrams)}";
}
