using System.Diagnostics;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Lines.Tests;

/// <summary>Readers paste anything. No text may end in a fault or a long wait.</summary>
public sealed class AnyTextTests
{
    /// <summary>Far above what any line takes on a busy machine: what is longer hangs. How long lines take is told by the benchmarks' <c>--any-text</c>.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(10);

    /// <summary>Ten times as many go through the benchmarks' <c>--any-text 100000</c>.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Ten_thousand_texts_are_each_answered_and_none_ends_in_a_fault(int seed)
    {
        var mill = new TextMill(seed, TestLines.Written);
        for (var text = 0; text < 5_000; text++)
        {
            Answer(mill.Bytes());
            Answer(mill.Mutated());
        }
    }

    [Fact]
    public void A_line_of_the_longest_length_is_answered_without_a_hang() => Assert.All(TextMill.Longest, Answer);

    [Fact]
    public void A_line_of_more_than_three_hundred_letters_comes_back_with_a_problem() =>
        Assert.Contains("300", Assert.Single(TestLines.Reader.Read(new string('1', 301), null)).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_same_line_is_read_the_same_way_in_capitals_but_for_the_spoons()
    {
        // T and t are two spoons, and marks of web pages are no words; everything else may be written in capitals.
        Assert.All(TestLines.Written.Where(line => !line.Contains('&', StringComparison.Ordinal) && !line.Split(' ').Any(word => word is "t" or "c" or "l" or "L")), line =>
        {
            var small = TestLines.Reader.Read(line, MeasureSystem.UsCustomary);
            var large = TestLines.Reader.Read(line.ToUpperInvariant(), MeasureSystem.UsCustomary);
            Assert.Equal(small.Select(reading => (reading.Ingredient, reading.Grams)), large.Select(reading => (reading.Ingredient, reading.Grams)));
        });
    }

    private static void Answer(string text)
    {
        var start = Stopwatch.GetTimestamp();
        var readings = TestLines.Reader.Read(text, null);
        Assert.True(Stopwatch.GetElapsedTime(start) < Hang, text);
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
}
