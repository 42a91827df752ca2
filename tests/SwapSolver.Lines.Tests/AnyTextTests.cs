using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

/// <summary>Readers paste anything. No text may end in a fault or a long wait.</summary>
public sealed class AnyTextTests
{
    /// <summary>The longest that one line may keep a processor, by the acceptance of the project: no clock on the wall, since a loaded machine lets a test wait.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(50);

    private const int Retries = 5;

    private static readonly string[] Lines =
        [.. new[] { "Reference/lines-of-text.csv", "Reference/lines-of-many-styles.csv" }.SelectMany(file => ReferenceTable.Read(file).Rows).Select(row => row["text"])];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Fifty_thousand_texts_are_each_answered_at_once_and_none_ends_in_a_fault(int seed)
    {
        var mill = new TextMill(seed, Lines);
        foreach (var line in Lines)
        {
            // The first calls of a process are slow: they are not timed.
            TestLines.Reader.Read(line, null);
        }

        for (var text = 0; text < 25_000; text++)
        {
            Answer(mill.Bytes());
            Answer(mill.Mutated());
        }
    }

    [Fact]
    public void A_line_of_the_longest_length_is_answered_at_once()
    {
        // Whatever repeats is where a grammar would run away.
        foreach (var piece in new[] { "1", "1/", "(", "((1", "a ", "one and a ", "1 cup + ", "1 or ", "½", "&#", ".", "..", "- ", "between 1 and ", "salt ", "flour or ", "x", "of a ", "40C " })
        {
            Answer(string.Concat(Enumerable.Repeat(piece, IngredientLines.MostLetters / piece.Length)));
        }
    }

    [Fact]
    public void A_line_of_more_than_three_hundred_letters_comes_back_with_a_problem() =>
        Assert.Contains("300", Assert.Single(TestLines.Reader.Read(new string('1', 301), null)).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_same_line_is_read_the_same_way_in_capitals_but_for_the_spoons()
    {
        // T and t are two spoons, and marks of web pages are no words; everything else may be written in capitals.
        Assert.All(Lines.Where(line => !line.Contains('&', StringComparison.Ordinal) && !line.Split(' ').Any(word => word is "t" or "c" or "l" or "L")), line =>
        {
            var small = TestLines.Reader.Read(line, MeasureSystem.UsCustomary);
            var large = TestLines.Reader.Read(line.ToUpperInvariant(), MeasureSystem.UsCustomary);
            Assert.Equal(small.Select(reading => (reading.Ingredient, reading.Grams)), large.Select(reading => (reading.Ingredient, reading.Grams)));
        });
    }

    private static void Answer(string text)
    {
        // The runtime's own threads count too; a slow line is slow every time.
        var (readings, took) = Timed(text);
        Assert.True(took < Patience || Enumerable.Range(0, Retries).Any(_ => Timed(text).Took < Patience), $"{took.TotalMilliseconds} ms for '{text}'");
        Assert.NotEmpty(readings);
        Assert.All(readings, reading =>
        {
            Assert.True(reading.Problem is not null || reading is { Ingredient: not null, Grams: not null }, text);
            if (reading.Grams is { } grams)
            {
                Assert.True(grams.Low.Value >= 0 && grams.Low <= grams.Typical && grams.Typical <= grams.High && double.IsFinite(grams.High.Value), text);
            }
        });
    }

    private static (IReadOnlyList<LineReading> Readings, TimeSpan Took) Timed(string text)
    {
        var before = Environment.CpuUsage.TotalTime;
        var readings = TestLines.Reader.Read(text, null);
        return (readings, Environment.CpuUsage.TotalTime - before);
    }
}
