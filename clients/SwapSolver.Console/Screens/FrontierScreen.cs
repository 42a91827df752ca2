using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>A trade-off as a table and a plot.</summary>
internal static class FrontierScreen
{
    private const int MostDecimals = 6;

    /// <summary>Shows the points in the order of the first reading.</summary>
    public static void Show(Screen screen, IReadOnlyList<TraceFrontierResponse> points)
    {
        var along = points.OrderBy(point => point.First.Value).ToList();
        var (first, second) = (along[0].First, along[0].Second);
        screen.Heading($"{Capital(ReadingTitle.Of(first))} against {ReadingTitle.Of(second)}");
        screen.Sentence($"The formula as it is: {Own(first, along[0].FirstBefore)}; {Own(second, along[0].SecondBefore)}.");
        screen.Sentence(along.Count == 1
            ? "One formula is the best of both: they do not stand against each other."
            : "No formula that keeps every band is better in one of the two without being worse in the other than a point below.");
        screen.Gap();
        var table = new PlainTable().Figures(ReadingTitle.Of(first)).Figures(ReadingTitle.Of(second)).Figures("of 100").Words("what changes");
        var writeFirst = Apart([.. along.Select(point => point.First.Value)]);
        var writeSecond = Apart([.. along.Select(point => point.Second.Value)]);
        foreach (var point in along)
        {
            table.Row(
                writeFirst(point.First.Value),
                writeSecond(point.Second.Value),
                (point.Answer.ChanceOfBalance * 100).ToString("0", CultureInfo.InvariantCulture),
                ChangeWords.Of(point.Answer.Changes));
        }

        screen.Table(table);
        screen.Item("of 100: kitchens in which every band holds, as ingredients vary. With --json each point has its whole formula.");
        if (along.Count > 1)
        {
            screen.Gap();
            foreach (var line in FrontierPlot.Draw(along))
            {
                screen.Item(line);
            }
        }

        var cautions = along.SelectMany(point => point.Answer.Cautions).Distinct().ToLookup(caution => along.TrueForAll(point => point.Answer.Cautions.Contains(caution)));
        Cautions.Show(screen, [.. cautions[true]]);
        Cautions.Show(screen, [.. cautions[false].Select(caution => $"Of some points: {caution}")]);
    }

    /// <summary>Writes a figure with as many decimals as tell every point from the next.</summary>
    private static Func<double, string> Apart(IReadOnlyList<double> values)
    {
        var decimals = Enumerable.Range(2, MostDecimals).FirstOrDefault(
            places => values.Select(value => Write(value, places)).Distinct().Count() == values.Distinct().Count(), MostDecimals);
        return value => Write(value, decimals);
    }

    private static string Write(double value, int decimals) => value.ToString($"F{decimals}", CultureInfo.InvariantCulture);

    private static string Own(Reading reading, double before) =>
        $"{ReadingTitle.Of(reading)} {new ReadingText(new Reading { Value = before }).Value} {reading.Unit}".TrimEnd();

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
