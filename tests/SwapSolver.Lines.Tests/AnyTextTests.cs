using System.Diagnostics;
using CsCheck;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

/// <summary>Readers paste anything. No text may end in a fault or a long wait.</summary>
public sealed class AnyTextTests
{
    /// <summary>The longest that one line may take, by the acceptance of the project; a loaded machine needs a margin, so
    /// the best of three tries counts.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(50);

    private static readonly string[] Lines = [.. ReferenceTable.Read("Reference/lines-of-text.csv").Rows.Select(row => row["text"])];

    private static readonly string[] Sprinkles =
        ["½", "1/0", "9999999999999999999999", "(", ")", "((((", "+", "plus", ",", "or", "/", "-", "×", "x", "\ud83c", "\u0000", "°C", "%", "à", "eggs", "cup", "L", "1,000", "0", " ", "\t", "﷽", "e\u0301\u0301"];

    private static readonly Gen<string> Mutated =
        from line in OneOf(Lines)
        from other in OneOf(Lines)
        from cut in Gen.Int[0, 300]
        from sprinkle in OneOf(Sprinkles).Array[0, 4]
        from repeats in Gen.Int[1, 5]
        select string.Concat(Enumerable.Repeat($"{line[..Math.Min(cut, line.Length)]}{string.Join(' ', sprinkle)}{other[Math.Min(cut, other.Length)..]} ", repeats));

    private static readonly Gen<string> AnyText = Gen.OneOf(Mutated, Gen.String[0, 320], Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.Char["½()/,1c+"]), 0, 320]);

    [Fact]
    public void Any_text_is_answered_and_none_ends_in_a_fault() =>
        AnyText.Sample(
            text =>
            {
                var readings = TestLines.Reader.Read(text, null);
                Assert.NotEmpty(readings);
                Assert.All(readings, reading =>
                {
                    Assert.True(reading.Problem is not null || reading is { Ingredient: not null, Grams: not null });
                    if (reading.Grams is { } grams)
                    {
                        Assert.True(grams.Low.Value >= 0 && grams.Low <= grams.Typical && grams.Typical <= grams.High && double.IsFinite(grams.High.Value));
                    }
                });
            },
            iter: 20_000);

    [Fact]
    public void Any_text_is_answered_quickly() =>
        AnyText.Sample(text => Assert.True(Enumerable.Range(0, 3).Min(_ => TimeOf(text)) < Patience, text), iter: 2_000, threads: 1);

    [Fact]
    public void A_line_of_more_than_three_hundred_letters_comes_back_with_a_problem() =>
        Assert.Contains("300", Assert.Single(TestLines.Reader.Read(new string('1', 301), null)).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_same_line_is_read_the_same_way_in_capitals_but_for_the_spoons()
    {
        // T and t are two spoons; every other word may be written in capitals.
        Assert.All(Lines.Where(line => !line.Split(' ').Any(word => word is "t" or "c" or "l" or "L")), line =>
        {
            var small = TestLines.Reader.Read(line, MeasureSystem.UsCustomary);
            var large = TestLines.Reader.Read(line.ToUpperInvariant(), MeasureSystem.UsCustomary);
            Assert.Equal(small.Select(reading => (reading.Ingredient, reading.Grams)), large.Select(reading => (reading.Ingredient, reading.Grams)));
        });
    }

    private static Gen<string> OneOf(string[] texts) => Gen.Int[0, texts.Length - 1].Select(place => texts[place]);

    private static TimeSpan TimeOf(string text)
    {
        var start = Stopwatch.GetTimestamp();
        TestLines.Reader.Read(text, null);
        return Stopwatch.GetElapsedTime(start);
    }
}
