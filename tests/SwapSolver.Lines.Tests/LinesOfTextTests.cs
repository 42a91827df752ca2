using System.Globalization;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

public sealed class LinesOfTextTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Read("Reference/lines-of-text.csv");

    public static TheoryData<string> Texts => [.. Table.Rows.Select(row => row["text"])];

    [Fact]
    public void The_table_holds_lines_of_many_styles() => Assert.True(Table.Rows.Length >= 150);

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_line_becomes_the_grams_that_it_says_or_is_not_guessed(string text)
    {
        var row = Table.Rows.Single(row => row["text"] == text);
        var readings = TestLines.Reader.Read(text, null);
        var told = string.Join(" | ", readings);
        if (row["ingredient"] == "?")
        {
            Assert.All(readings, reading => Assert.True(reading.Ingredient is null && reading.Grams is null && reading.Problem is not null, told));
            return;
        }

        Assert.True(row["ingredient"] == string.Join('+', readings.Select(reading => reading.Ingredient?.Id ?? "?")), told);
        if (row["grams"] == "!")
        {
            Assert.True(readings[0].Grams is null && readings[0].Problem is not null, told);
            return;
        }

        var grams = row["grams"].Split('+').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(grams.Count, readings.Length);
        Assert.All(readings.Zip(grams), pair =>
        {
            Assert.True(pair.First is { Problem: null, Grams: not null }, told);
            Assert.True(Math.Abs(pair.First.Grams!.Value.Typical.Value - pair.Second) <= row.Tolerance + 0.005, $"{told} against {row.Name} '{row.Text}' ({row.Source})");
            Assert.True(pair.First.Grams.Value is var range && range.Low <= range.Typical && range.Typical <= range.High, told);
        });
    }
}
