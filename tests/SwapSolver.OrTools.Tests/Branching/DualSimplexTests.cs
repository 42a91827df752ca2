using SwapSolver.OrTools.Branching;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What the dual simplex claims where digits run short: models of a row or two, each solved by hand. Random programs lose none.</summary>
public sealed class DualSimplexTests
{
    private const double Open = double.PositiveInfinity;

    private const double Near = 1e-8;

    [Theory]
    // One row: x + z / 2 >= 1 at 1 a gram each, so x = 1. The proof is told another entry, and comes out lower by so much. To the
    // ninth digit that is nothing; to the seventh it is believed of fresh digits, to the fourth after a second beginning.
    [InlineData(5e-10, true, 1, 1)]
    [InlineData(5e-8, true, 1, 0)]
    [InlineData(5e-5, true, 2, 1)]
    [InlineData(5e-3, false, 2, 1)]
    public void A_cost_is_believed_that_the_proof_comes_near_to(double lost, bool isBelieved, long steps, int sinceFresh)
    {
        var simplex = new DualSimplex(LosingDigits(lost), CancellationToken.None);
        Assert.Equal(isBelieved ? LinearOutcome.Best : LinearOutcome.Unsettled, simplex.Solve(Open));
        Assert.Equal(1, simplex.Values[0], Near);
        Assert.Equal((steps, sinceFresh), (simplex.Steps, simplex.Tableau.Steps));
    }

    [Fact]
    public void What_costs_as_much_as_is_worth_finding_is_too_dear_and_only_by_proof()
    {
        Assert.Equal(LinearOutcome.TooDear, new DualSimplex(LosingDigits(0), CancellationToken.None).Solve(1));
        Assert.Equal(LinearOutcome.Best, new DualSimplex(LosingDigits(0), CancellationToken.None).Solve(1.001));
        // The tableau says 1 and the proof 0.99: nobody knows whether it costs less than 0.995.
        Assert.Equal(LinearOutcome.Unsettled, new DualSimplex(LosingDigits(0.01), CancellationToken.None).Solve(0.995));
    }

    [Theory]
    // A thousand grams of a trace, 5e-9 a gram, would bring 5e-6; the steps do not touch entries as small as that.
    [InlineData(5e-7, LinearOutcome.Unsettled)]
    // So little is missing that it is forgiven at the second look.
    [InlineData(2e-9, LinearOutcome.Best)]
    public void A_trace_that_could_make_up_for_it_is_no_proof_that_nothing_does(double missing, object outcome)
    {
        var simplex = new DualSimplex(ReducedByHand.Of([(0, 1_000, 1)], ([5e-9], missing, Open)), CancellationToken.None);
        Assert.Equal(outcome, simplex.Solve(Open));
    }

    [Fact]
    public void What_is_missing_beyond_the_tolerance_with_nothing_to_make_up_for_it_is_proof() =>
        // x stands still at 0, and 1.5e-9 are asked for.
        Assert.Equal(LinearOutcome.Nothing, new DualSimplex(ReducedByHand.Of([(0, 0, 1)], ([1], 1.5e-9, Open)), CancellationToken.None).Solve(Open));

    [Fact]
    public void A_saving_of_the_last_digits_does_not_send_a_column_to_its_endless_side()
    {
        // x saves 5e-8 a gram and has no ceiling of its own; the row holds it at 3.
        var simplex = new DualSimplex(ReducedByHand.Of([(0, Open, -5e-8)], ([1], 1, 3)), CancellationToken.None);
        Assert.Equal(LinearOutcome.Best, simplex.Solve(Open));
        Assert.Equal(3, simplex.Values[0], Near);
        // What saves more than that has no place to begin at, and neither has what has no end at all.
        Assert.Equal(LinearOutcome.Unsettled, new DualSimplex(ReducedByHand.Of([(0, Open, -2e-7)], ([1], 1, 3)), CancellationToken.None).Solve(Open));
        Assert.Equal(LinearOutcome.Unsettled, new DualSimplex(ReducedByHand.Of([(-Open, Open, 0)], ([1], 1, 3)), CancellationToken.None).Solve(Open));
    }

    [Fact]
    public void Between_two_rows_that_are_nearly_one_a_step_is_taken_with_fresh_digits()
    {
        // x + y >= 1 and x + 1.000001 y >= 1.0000005 meet at one half each; y costs 5e-7 more, so both hold there. After the
        // first step the other row has an entry of a millionth.
        var simplex = new DualSimplex(
            ReducedByHand.Of([(0, 10, 1), (0, 10, 1 + 5e-7)], ([1, 1], 1, Open), ([1, 1 + 1e-6], 1 + 5e-7, Open)), CancellationToken.None);
        Assert.Equal(LinearOutcome.Best, simplex.Solve(Open));
        Assert.Equal(0.5, simplex.Values[0], Near);
        Assert.Equal(0.5, simplex.Values[1], Near);
        Assert.Equal((2, 1), (simplex.Steps, simplex.Tableau.Steps));
    }

    [Theory]
    // a + 0.0001 b >= 1.5 with at most 1 g of a at 1 a gram and any b at 0.0002: by price a comes first and b makes up for the
    // rest. A step by 0.0001 costs digits: a is stepped by first, and then what it has too much of goes over to b.
    [InlineData(1, 1.5, 2)]
    // Where a's own entry is as small, nothing is won by that.
    [InlineData(0.0001, 0.00015, 1)]
    public void A_small_entry_is_stepped_by_where_there_is_no_larger_one(double entry, double needed, long steps)
    {
        var simplex = new DualSimplex(ReducedByHand.Of([(0, 1, entry), (0, Open, 0.0002)], ([entry, 0.0001], needed, Open)), CancellationToken.None);
        Assert.Equal(LinearOutcome.Best, simplex.Solve(Open));
        Assert.Equal(1, simplex.Values[0], Near);
        Assert.Equal((needed - entry) / 0.0001, simplex.Values[1], 1e-6);
        Assert.Equal(steps, simplex.Steps);
    }

    [Fact]
    public void A_long_solve_is_stopped_on_its_way_and_a_short_one_comes_to_its_end()
    {
        var gone = new CancellationToken(canceled: true);
        Assert.Equal(LinearOutcome.Best, new DualSimplex(Apart(10), gone).Solve(Open));
        Assert.Throws<OperationCanceledException>(() => new DualSimplex(Apart(80), gone).Solve(Open));

        // So many lines, each with a row of its own that asks for a gram: a step each.
        static ReducedModel Apart(int lines) => ReducedByHand.Of(
            [.. Enumerable.Repeat((0.0, 2.0, 1.0), lines)],
            [.. Enumerable.Range(0, lines).Select(line => (Enumerable.Range(0, lines).Select(other => other == line ? 1.0 : 0).ToArray(), 1.0, Open))]);
    }

    /// <summary>x + z / 2 >= 1, up to 10 g of either at 1 a gram; the proof reads an entry of z by which it ends so much lower.</summary>
    private static ReducedModel LosingDigits(double lost)
    {
        var model = ReducedByHand.Of([(0, 10, 1), (0, 10, 1)], ([1, 0.5], 1, Open));
        // z's own cost beyond what it saves is then 1 - (1 + lost / 10), at most 10 times.
        model.Entries[1] = lost == 0 ? 0.5 : 1 + (lost / 10);
        return model;
    }
}
