using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

public sealed class CardTableTests
{
    private static readonly Formula Walnut = Loaf.Walnut with { BakeLoss = new Percent(11) };

    private static readonly List<string[]> Rows = Read(CardPrinter.Csv(TestCards.Of(Walnut, "eu")));

    [Fact]
    public void Lines_add_up_to_the_batter() =>
        Assert.Equal(
            Figure(Rows.Single(row => row[0] == "batter")[4]),
            Rows.Where(row => row[0] == "line").Sum(row => Figure(row[4])),
            1e-3);

    [Fact]
    public void Slices_of_the_label_add_up_to_the_loaf() => Assert.All(
        Rows.Where(row => row[0] == "label"), row => Assert.Equal(Figure(row[8]), Figure(row[6]) * Walnut.Slices, 1e-3));

    [Fact]
    public void Every_row_has_every_column_and_lines_end_as_the_standard_says()
    {
        Assert.All(Rows, row => Assert.Equal(11, row.Length));
        Assert.DoesNotContain('\n', CardPrinter.Csv(TestCards.Of(Walnut)).Replace("\r\n", string.Empty, StringComparison.Ordinal));
    }

    private static List<string[]> Read(string csv) =>
        [.. csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(','))];

    private static double Figure(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
