using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>Whatever is exchanged, a tableau says what the rows of its model say: at any values of the columns, each unknown that a
/// row gives is the sum of those at rest, and the costs come to the same.</summary>
public sealed class TableauTests
{
    /// <summary>Entries stepped by here are at least this, so that a hundred steps lose few digits.</summary>
    private const double SoundEntry = 0.1;

    private const double Tolerance = 1e-6;

    [Fact]
    public void At_the_beginning_all_columns_are_at_rest_and_nothing_was_stepped()
    {
        var model = Reduced(1);
        var tableau = new Tableau(model);
        Assert.Equal(Enumerable.Range(0, model.Columns), tableau.Resting);
        Assert.Equal(Enumerable.Range(model.Columns, model.Rows), tableau.Basic);
        Assert.All(tableau.Weights, weight => Assert.Equal(1, weight));
        Assert.Equal(0, tableau.Steps);
        AssertSays(model, tableau, new Random(1));
    }

    [Fact]
    public void After_any_steps_it_says_the_same_as_the_rows_and_so_it_does_computed_anew()
    {
        var stepped = 0;
        for (var number = 0; number < 200; number++)
        {
            var (model, random) = (Reduced(number), new Random(number));
            var tableau = new Tableau(model);
            var steps = Walk(tableau, model, random, 20);
            Assert.Equal(steps, tableau.Steps);
            AssertSays(model, tableau, random);
            var gives = tableau.Basic.Order().ToList();
            Assert.True(tableau.TryRenew());
            Assert.Equal(0, tableau.Steps);
            Assert.Equal(gives, tableau.Basic.Order());
            AssertSays(model, tableau, random);
            stepped += steps;
        }

        Assert.True(stepped > 1_000, $"only {stepped} steps were taken");
    }

    [Fact]
    public void A_step_there_and_back_changes_nothing()
    {
        var model = Reduced(3);
        var (tableau, untouched) = (new Tableau(model), new Tableau(model));
        var place = Enumerable.Range(0, model.Columns).First(one => Math.Abs(tableau[0, one]) > SoundEntry);
        tableau.Exchange(0, place);
        Assert.Equal(model.Columns, tableau.Resting[place]);
        Assert.Equal(place, tableau.Basic[0]);
        tableau.Exchange(0, place);
        Assert.Equal(2, tableau.Steps);
        Assert.Equal(untouched.Basic, tableau.Basic);
        for (var row = 0; row < model.Rows; row++)
        {
            Assert.Equal(untouched.Row(row).ToArray(), tableau.Row(row).ToArray(), Near);
        }

        Assert.Equal(untouched.Costs.ToArray(), tableau.Costs.ToArray(), Near);
    }

    [Fact]
    public void One_that_takes_over_another_goes_on_from_where_that_stood()
    {
        var (model, random) = (Reduced(5), new Random(5));
        var (walked, other) = (new Tableau(model), new Tableau(model));
        Walk(walked, model, random, 10);
        walked.Weights[0] = 3;
        other.CopyFrom(walked);
        Assert.Equal(walked.Steps, other.Steps);
        Assert.Equal(walked.Basic, other.Basic);
        Assert.Equal(walked.Resting, other.Resting);
        Assert.Equal(walked.Weights, other.Weights);
        AssertSays(model, other, random);
        // And what one of them does from now on is nothing to the other.
        Walk(walked, model, random, 3);
        AssertSays(model, other, random);
    }

    [Fact]
    public void Two_rows_that_say_the_same_cannot_give_two_unknowns()
    {
        var model = Reduction.Of(new Model(
            [new("x", 0, 1, true, 1), new("y", 0, 1, true, 1)],
            [new("one", [new(0, 1), new(1, 1)], 1, double.PositiveInfinity), new("again", [new(0, 1), new(1, 1)], 1, double.PositiveInfinity)]))!;
        var tableau = new Tableau(model);
        (tableau.Basic[0], tableau.Basic[1]) = (0, 1);
        Assert.False(tableau.TryRenew());
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) <= Tolerance * Math.Max(1, Math.Abs(one));

    private static ReducedModel Reduced(int number)
    {
        while (true)
        {
            if (Reduction.Of(RandomPrograms.Linear(number)) is { Rows: >= 2, Columns: >= 2 } model)
            {
                return model;
            }

            number += 1_000;
        }
    }

    private static int Walk(Tableau tableau, ReducedModel model, Random random, int tries)
    {
        var steps = 0;
        for (var attempt = 0; attempt < tries; attempt++)
        {
            var (row, place) = (random.Next(model.Rows), random.Next(model.Columns));
            if (Math.Abs(tableau[row, place]) > SoundEntry)
            {
                tableau.Exchange(row, place);
                steps++;
            }
        }

        return steps;
    }

    private static void AssertSays(ReducedModel model, Tableau tableau, Random random)
    {
        var values = new double[model.Columns + model.Rows];
        double cost = 0;
        for (var column = 0; column < model.Columns; column++)
        {
            values[column] = random.NextDouble() - 0.5;
            cost += model.Costs[column] * values[column];
        }

        for (var row = 0; row < model.Rows; row++)
        {
            for (var entry = model.RowStarts[row]; entry < model.RowStarts[row + 1]; entry++)
            {
                values[model.Columns + row] += model.Entries[entry] * values[model.EntryColumns[entry]];
            }
        }

        Assert.Equal(Enumerable.Range(0, values.Length), tableau.Basic.Concat(tableau.Resting).Order());
        for (var row = 0; row < model.Rows; row++)
        {
            AssertSum(values[tableau.Basic[row]], tableau.Row(row));
        }

        AssertSum(cost, tableau.Costs);

        void AssertSum(double expected, ReadOnlySpan<double> terms)
        {
            double sum = 0, size = 1;
            for (var place = 0; place < model.Columns; place++)
            {
                sum += terms[place] * values[tableau.Resting[place]];
                size = Math.Max(size, Math.Abs(terms[place] * values[tableau.Resting[place]]));
            }

            Assert.True(Math.Abs(sum - expected) <= Tolerance * size, $"{sum} beside {expected}");
        }
    }
}
