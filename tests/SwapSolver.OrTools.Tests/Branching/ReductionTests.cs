using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What is left of a model to search in, each by hand.</summary>
public sealed class ReductionTests
{
    private const double Open = double.PositiveInfinity;

    [Fact]
    public void A_batter_of_a_given_mass_leaves_one_unknown_fewer()
    {
        // flour + water = 100, flour at 1 a gram and 60 at most, water at 3 a gram: flour is 100 less water, and water 40 at least.
        var model = new Model(
            [new("flour", 0, 60, false, 1), new("water", 30, 100, false, 3)],
            [new("batter", [new(0, 1), new(1, 1)], 100, 100)]);
        var reduced = Reduction.Of(model)!;
        Assert.Equal([1], reduced.Restoring.Kept);
        double[] water = [40 / reduced.Restoring.Units[0]];
        Assert.Equal([60, 40], reduced.Restoring.Values(model, water));
        Assert.Equal(60 + 120, Cost(reduced, water), 1e-9);
        Assert.Equal(1, reduced.Rows);
        Assert.Equal(40, Limit(reduced, 0), 1e-9);
    }

    [Fact]
    public void Of_two_columns_the_one_in_fewer_rows_is_named()
    {
        var reduced = Reduction.Of(new Model(
            [new("here_and_there", 0, 10, false, 1), new("here", 0, 10, false, 1)],
            [new("sum", [new(0, 1), new(1, 1)], 8, 8), new("there", [new(0, 1)], 2, Open)]))!;
        Assert.Equal([0], reduced.Restoring.Kept);
    }

    [Fact]
    public void Of_two_columns_in_as_many_rows_the_one_that_counts_more_is_named()
    {
        Assert.Equal([0], Kept(2, 4));
        Assert.Equal([1], Kept(4, 2));
        Assert.Equal([1], Kept(-4, 2));

        static int[] Kept(double first, double second) => Reduction.Of(new Model(
            [new("x", 0, 10, false, 1), new("y", 0, 10, false, 1)],
            [new("sum", [new(0, first), new(1, second)], 8, 8)]))!.Restoring.Kept;
    }

    [Fact]
    public void A_trace_names_nothing_and_neither_does_a_whole_egg()
    {
        // The trace would be 1,000 times as far out as the last digit of the other; a whole number named by others need not be whole.
        Assert.Equal([1], Kept(false, 1, 1e-4));
        Assert.Equal([1], Kept(false, 1000, 0.1));
        Assert.Equal([1], Kept(true, 1, 1));

        static int[] Kept(bool isWhole, double first, double second) => Reduction.Of(new Model(
            [new("x", 0, 10, false, 1), new("y", 0, 10, isWhole, 1)],
            [new("sum", [new(0, first), new(1, second)], 8, 8), new("again", [new(0, 1)], 1, Open)]))!.Restoring.Kept;
    }

    [Fact]
    public void What_is_fixed_is_a_constant_in_the_rows_and_in_the_cost()
    {
        // 7 g are given at 2 each; 2 x 7 + y >= 20 leaves y >= 6.
        var model = new Model(
            [new("given", 7, 7, false, 2), new("y", 0, 64, false, 1)],
            [new("needed", [new(0, 2), new(1, 1)], 20, Open)]);
        var reduced = Reduction.Of(model)!;
        Assert.Equal([1], reduced.Restoring.Kept);
        Assert.Equal(14, reduced.Constant);
        Assert.Equal(6, Limit(reduced, 0), 1e-9);
        Assert.Equal([7, 6], reduced.Restoring.Values(model, [6 / reduced.Restoring.Units[0]]));
    }

    [Fact]
    public void A_row_that_always_holds_is_left_out_and_one_that_holds_on_one_side_keeps_the_other()
    {
        var reduced = Reduction.Of(new Model(
            [new("x", 0, 1, false, 1), new("y", 0, 1, false, 1)],
            [
                new("always", [new(0, 1), new(1, 1)], 0, 2),
                new("least", [new(0, 1), new(1, 1)], 1, 2),
                new("most", [new(0, 1), new(1, -1)], -1, 0.5),
            ]))!;
        Assert.Equal(2, reduced.Rows);
        Assert.Equal((1.0, Open), (reduced.Low[2], reduced.High[2]));
        Assert.Equal((-Open, 0.5), (reduced.Low[3], reduced.High[3]));
    }

    [Fact]
    public void A_column_that_costs_and_only_helps_needs_no_more_than_its_row_asks_for()
    {
        // 2 x + y >= 9 with y >= 1: x = 4 is enough whatever y is. In the second row x would need 3.
        var most = Most([new("a", [new(0, 2), new(1, 1)], 9, Open), new("b", [new(0, 1)], 3, Open)]);
        Assert.Equal(4, most, 1e-4);
        Assert.True(most > 4);
        // Held on its other side, it helps too: -x <= -5.
        Assert.Equal(5, Most([new("c", [new(0, -1)], -Open, -5)]), 1e-4);
        // Needed nowhere, it stays where it is least.
        Assert.Equal(0, Most([new("d", [new(1, 1)], 5, Open)]), 1e-4);
        // Where more of it may be asked for to balance another, nobody knows how much.
        Assert.Equal(Open, Most([new("e", [new(0, 1), new(1, -1)], 0, 8)]));

        static double Most(List<ModelRow> rows)
        {
            var reduced = Reduction.Of(new Model([new("x", 0, Open, false, 1), new("y", 1, 60, false, 1)], rows))!;
            return reduced.High[0] * reduced.Restoring.Units[0];
        }
    }

    [Fact]
    public void What_cancels_but_for_the_last_digits_is_nothing()
    {
        // x is a tenth of y, so 3 x - 0.3 y is nothing, though in binary it comes to 5.6e-17; z alone is left in the row.
        var reduced = Reduction.Of(new Model(
            [new("x", 0, 10, false, 1), new("y", 0, 50, false, 1), new("z", 0, 8, false, 1)],
            [new("tenth", [new(0, 1), new(1, -0.1)], 0, 0), new("left", [new(0, 3), new(1, -0.3), new(2, 1)], 1, Open)]))!;
        Assert.Equal([1, 2], reduced.Restoring.Kept);
        Assert.Equal([1], reduced.EntryColumns);
    }

    [Fact]
    public void Half_a_gram_is_a_limit_for_grams() => Assert.Equal(
        (0.5, 1.5), Reduction.Of(new Model([new("x", 0.5, 1.5, false, 1)], [])) is { } reduced ? (reduced.Low[0], reduced.High[0]) : default);

    [Fact]
    public void A_column_that_pays_is_given_no_limit()
    {
        var reduced = Reduction.Of(new Model(
            [new("x", 0, Open, false, -1), new("y", 0, 10, false, 1)],
            [new("least", [new(0, 1)], 3, Open), new("paid_for", [new(0, 1), new(1, -1)], -Open, 0)]))!;
        Assert.Equal(Open, reduced.High[0]);
    }

    [Fact]
    public void Columns_and_rows_are_counted_in_powers_of_two_so_that_no_digit_is_lost()
    {
        // Up to 300 g is counted in 256 g, up to 5,000 g in 1,024 g, eggs one by one.
        var reduced = Reduction.Of(new Model(
            [new("x", 0, 300, false, 1), new("y", -5_000, 10, false, 1), new("eggs", 0, 12, true, 1)],
            [new("sum", [new(0, 1), new(1, 1), new(2, 50)], 40, Open)]))!;
        Assert.Equal([256, 1024, 1], reduced.Restoring.Units);
        Assert.Equal([2], reduced.Whole);
        // The row's largest entry is 1,024, so it is counted in those.
        Assert.Equal([0.25, 1, 50 / 1024.0], reduced.Entries);
        Assert.Equal(40 / 1024.0, reduced.Low[3]);
        Assert.Equal([0, -5_000 / 1024.0, 0], reduced.Low[..3]);
        Assert.Equal([300 / 256.0, 10 / 1024.0, 12], reduced.High[..3]);
        Assert.Equal([256, 1024, 1], reduced.Costs[..3]);
    }

    [Fact]
    public void A_dense_row_is_filled_up_with_zeros()
    {
        var reduced = Reduction.Of(new Model(
            [new("x", 0, 1, false, 1), new("y", 0, 1, false, 1), new("z", 0, 1, false, 1)],
            [new("a", [new(0, 1), new(1, 1)], 1.5, Open), new("b", [new(2, 1), new(1, 0.5)], 1.2, Open)]))!;
        Assert.Equal(8, reduced.Width);
        Assert.Equal([1, 1, 0, 0, 0, 0, 0, 0, 0, 0.5, 1, 0, 0, 0, 0, 0], reduced.Dense);
        Assert.Equal([0, 2, 4], reduced.RowStarts);
        Assert.Equal([0, 1, 1, 2], reduced.EntryColumns);
        Assert.Equal(8, reduced.Costs.Length);
    }

    [Theory]
    [InlineData(0.2, 0.8, false)]
    [InlineData(0.2, 1, true)]
    [InlineData(2 + 1e-10, 2.5, true)]
    [InlineData(2.5, 3 - 1e-10, true)]
    public void An_egg_has_a_whole_number_between_its_limits_or_there_is_no_answer(double low, double high, bool isThere) =>
        Assert.Equal(isThere, Reduction.Of(new Model([new("eggs", low, high, true, 1)], [])) is not null);

    [Fact]
    public void Equalities_that_name_one_through_another_are_undone_in_the_end()
    {
        // a + b = 10, b + c = 7, c + d = 4, d = 1 at the least: a = 6, b = 4, c = 3, d = 1 is one of the points.
        var model = new Model(
            [new("a", 0, 100, false, 1), new("b", 0, 100, false, 2), new("c", 0, 100, false, 4), new("d", 1, 100, false, 8)],
            [
                new("one", [new(0, 1), new(1, 1)], 10, 10),
                new("two", [new(1, 2), new(2, 2)], 14, 14),
                new("three", [new(2, 1), new(3, 1)], 4, 4),
            ]);
        var reduced = Reduction.Of(model)!;
        Assert.Equal(1, reduced.Columns);
        double[] point = [6, 4, 3, 1];
        double[] values = [point[reduced.Restoring.Kept[0]] / reduced.Restoring.Units[0]];
        Assert.Equal(point, reduced.Restoring.Values(model, values), (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.Equal(6 + 8 + 12 + 8, Cost(reduced, values), 1e-9);
    }

    [Fact]
    public void Two_terms_of_one_column_are_one()
    {
        var reduced = Reduction.Of(new Model([new("x", 0, 1, false, 1)], [new("twice", [new(0, 0.25), new(0, 0.5)], 0.6, Open)]))!;
        // 0.75 x >= 0.6, in halves.
        Assert.Equal([1.5], reduced.Entries);
        Assert.Equal(1.2, reduced.Low[1]);
    }

    private static double Cost(ReducedModel reduced, double[] values) =>
        reduced.Constant + values.Select((value, column) => value * reduced.Costs[column]).Sum();

    /// <summary>The limit that a row with one entry sets to its column, in the full model's units.</summary>
    private static double Limit(ReducedModel reduced, int row)
    {
        var place = reduced.RowStarts[row];
        var side = double.IsInfinity(reduced.Low[reduced.Columns + row]) ? reduced.High[reduced.Columns + row] : reduced.Low[reduced.Columns + row];
        return side / reduced.Entries[place] * reduced.Restoring.Units[reduced.EntryColumns[place]];
    }
}
