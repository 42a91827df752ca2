using System.Globalization;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

public sealed class LinesOfTextTests
{
    private static readonly ReferenceTable[] Tables =
        [
            ReferenceTable.Read("Reference/lines-of-text.csv"), ReferenceTable.Read("Reference/lines-of-many-styles.csv"),
            ReferenceTable.Read("Reference/lines-as-pasted.csv"), ReferenceTable.Read("Reference/lines-of-further-foods.csv"),
        ];

    /// <summary>Every line, with the file and line that it stands in.</summary>
    public static TheoryData<string, string> Lines
    {
        get
        {
            var lines = new TheoryData<string, string>();
            foreach (var row in Tables.SelectMany(table => table.Rows))
            {
                lines.Add(row.Name, row["text"]);
            }

            return lines;
        }
    }

    [Fact]
    public void The_tables_hold_lines_of_many_styles() => Assert.True(Lines.Select(line => (string)line[1]).Distinct().Count() >= 500);

    [Fact]
    public void Every_ingredient_of_the_pantry_stands_in_a_line()
    {
        var named = Tables.SelectMany(table => table.Rows).SelectMany(row => row["ingredient"].Split('+')).ToHashSet();
        Assert.All(TestKitchen.Bakehouse.Pantry.Ingredients, ingredient => Assert.Contains(ingredient.Id, named));
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_becomes_the_grams_that_it_says_or_is_not_guessed(string place, string text)
    {
        var row = Tables.SelectMany(table => table.Rows).Single(row => row.Name == place);
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
