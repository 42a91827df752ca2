using System.Diagnostics;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Tables.Tests;

/// <summary>Kitchens import anything. No text may end in a fault or a long wait, and what goes in can be true.</summary>
public sealed class AnyTableTests
{
    private const int Cases = 20_000;

    /// <summary>Far above what any text takes on a busy machine: what is longer hangs. How long texts take is told by the benchmarks' <c>--any-text</c>.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(10);

    [Fact]
    public void Any_text_is_answered_without_a_hang_and_what_goes_in_can_be_true()
    {
        var mill = new TableMill(31_415);
        var (let, left) = (0, 0);
        for (var number = 0; number < Cases; number++)
        {
            var slice = mill.Any();
            var start = Stopwatch.GetTimestamp();
            var reading = TestTables.Reader.Read(slice);
            Assert.True(Stopwatch.GetElapsedTime(start) < Hang, slice.Text);
            AssertCanBeTrue(reading);
            let += reading.Rows.Length + reading.Weights.Length;
            left += reading.LeftOut;
        }

        // Texts that are all let in, or all left out, would show nothing.
        Assert.True(let > Cases / 4 && left > Cases / 4, $"{let} rows went in, {left} were left out");
    }

    private static void AssertCanBeTrue(TableReading reading)
    {
        Assert.True(reading.LeftOut >= 0 && (reading.LeftOut == 0 || reading.Problems.Length > 0));
        Assert.True(reading.Problems.All(problem => problem.Line >= 1 && problem.Reason.Length > 0 && problem.WayOut.Length > 0));
        Assert.Equal(reading.Foods.Length, reading.Foods.Select(food => food.Id).Distinct().Count());
        foreach (var food in reading.Foods)
        {
            Assert.Matches("^[a-z0-9-]{1,64}$", food.Id);
            Assert.InRange(food.Name.Length, 1, 200);
            double Typical(Fact fact) => food.Figures.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
            Fact[] whole = [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other];
            Assert.InRange(whole.Sum(Typical), food.Figures.ContainsKey(Fact.Ash) ? 98.5 - 1e-9 : 86.5, 101.5 + 1e-9);
            Assert.True(Typical(Fact.SaturatedFat) <= Typical(Fact.Fat) + 0.0051);
            foreach (var (fact, figure) in TestTables.IngredientOf(food).Figures)
            {
                Assert.True(figure.Range.IsInOrder && figure.Range.Low >= 0 && figure.Range.High <= fact.Most, $"{fact} of {food.Name}: {figure.Range}");
            }
        }

        Assert.True(reading.Weights.All(weight => weight.Measure.Amount > 0 && double.IsFinite(weight.Measure.Grams.Value) && weight.Measure.Grams.Value > 0));
    }
}
