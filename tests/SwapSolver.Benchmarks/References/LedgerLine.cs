using System.Globalization;

namespace SwapSolver.Benchmarks.References;

/// <summary>One figure that a test compared.</summary>
/// <param name="Area">The test project.</param>
/// <param name="Row">Table and line.</param>
/// <param name="What">What it is of the row.</param>
/// <param name="Printed">The figure as it is printed.</param>
/// <param name="Found">The code's.</param>
/// <param name="Tolerance">How far apart they may be.</param>
/// <param name="Mark">How the printed figure is known.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Said">The row in full.</param>
internal sealed record LedgerLine(string Area, string Row, string What, string Printed, string Found, string Tolerance, string Mark, string Source, string Said)
{
    /// <summary>The table.</summary>
    public string Table => Row.Split(':')[0];

    /// <summary>The line of the table.</summary>
    public int Line => int.Parse(Row.Split(':')[1], CultureInfo.InvariantCulture);

    /// <summary>Reads what a test noted.</summary>
    public static LedgerLine Of(string text)
    {
        var cells = text.Split('\t');
        return new LedgerLine(cells[0], cells[1], cells[2], cells[3], Rounded(cells[4]), cells[5], cells[6], cells[7], cells[8]);
    }

    private static string Rounded(string value) => double.Parse(value, CultureInfo.InvariantCulture).ToString("0.######", CultureInfo.InvariantCulture);
}
