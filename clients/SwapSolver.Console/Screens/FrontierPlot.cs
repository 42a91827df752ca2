using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The points of a trade-off drawn with letters.</summary>
internal static class FrontierPlot
{
    private const int Columns = 56;
    private const int Rows = 14;

    /// <summary>Draws the points (*) and the formula as it was (o), the first reading across and the second up.</summary>
    public static IEnumerable<string> Draw(IReadOnlyList<TraceFrontierResponse> points)
    {
        var across = Range(points.Select(point => point.First.Value).Append(points[0].FirstBefore));
        var up = Range(points.Select(point => point.Second.Value).Append(points[0].SecondBefore));
        var sheet = Enumerable.Range(0, Rows).Select(_ => Enumerable.Repeat(' ', Columns).ToArray()).ToArray();
        void Mark(double x, double y, char sign) => sheet[Rows - 1 - Cell(up, y, Rows)][Cell(across, x, Columns)] = sign;

        Mark(points[0].FirstBefore, points[0].SecondBefore, 'o');
        foreach (var point in points)
        {
            Mark(point.First.Value, point.Second.Value, '*');
        }

        string[] heights = [Figure(points[0].Second, up.High), Figure(points[0].Second, up.Low)];
        var margin = heights.Max(text => text.Length);
        yield return $"{ReadingTitle.WithUnit(points[0].Second)}, up";
        for (var row = 0; row < Rows; row++)
        {
            var height = row == 0 ? heights[0] : row == Rows - 1 ? heights[1] : "";
            yield return $"{height.PadLeft(margin)} |{new string(sheet[row]).TrimEnd()}";
        }

        var (left, right) = (Figure(points[0].First, across.Low), Figure(points[0].First, across.High));
        yield return $"{new string(' ', margin)} +{new string('-', Columns)}";
        yield return $"{new string(' ', margin + 2)}{left}{right.PadLeft(Columns - left.Length)}";
        yield return $"{new string(' ', margin + 2)}{ReadingTitle.WithUnit(points[0].First)}, across; * a point, o the formula as it is";
    }

    private static string Figure(Reading reading, double value) => new ReadingText(new Reading { Value = value, Unit = reading.Unit }).Value;

    private static (double Low, double High) Range(IEnumerable<double> values)
    {
        var all = values.ToList();
        return (all.Min(), all.Max());
    }

    private static int Cell((double Low, double High) range, double value, int cells) =>
        range.High > range.Low ? (int)Math.Round((value - range.Low) / (range.High - range.Low) * (cells - 1)) : 0;
}
