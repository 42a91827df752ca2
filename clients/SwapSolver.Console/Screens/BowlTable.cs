using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What goes into the bowl, in order, and how it is baked.</summary>
internal static class BowlTable
{
    /// <summary>Shows a formula's lines in grams.</summary>
    public static void Show(Screen screen, Formula formula, string title = "Into the bowl")
    {
        screen.Part(title);
        var table = new PlainTable().Words("what").Figures("grams").Words("");
        foreach (var line in formula.Lines)
        {
            table.Row(What(line), Amount.Grams(line.Grams), Amount.Count(line));
        }

        table.Row("in all", Total(formula), "");
        screen.Table(table);
        BakeLine.Show(screen, formula);
    }

    /// <summary>Shows a formula's lines in grams and as shares of its flours.</summary>
    public static void Show(Screen screen, Formula formula, IReadOnlyList<BakersPercentage> shares)
    {
        screen.Part("In the bowl");
        var table = new PlainTable().Words("what").Figures("grams").Figures("% of flour").Words("");
        for (var place = 0; place < formula.Lines.Count; place++)
        {
            var line = formula.Lines[place];
            table.Row(What(line), Amount.Grams(line.Grams), Share(shares, place, line), Amount.Count(line));
        }

        table.Row("in all", Total(formula), "", "");
        screen.Table(table);
        BakeLine.Show(screen, formula);
    }

    private static string What(Line line) => line.DisplayName.Length > 0 ? line.DisplayName
        : line.Ingredient.Length > 0 ? IngredientName.Of(line.Ingredient)
        : line.Text;

    private static string Total(Formula formula) => Amount.Grams(formula.Lines.Sum(line => line.Grams));

    // The shares come in the order of the lines; one that does not belong to its line is left out, not guessed.
    private static string Share(IReadOnlyList<BakersPercentage> shares, int place, Line line)
    {
        var share = shares.ElementAtOrDefault(place);
        return share is { HasPercent: true } && share.Ingredient == line.Ingredient
            ? share.Percent.ToString("0.0", CultureInfo.InvariantCulture)
            : "";
    }
}
