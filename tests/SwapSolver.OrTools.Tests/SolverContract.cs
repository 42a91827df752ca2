using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>What every solver must do, whichever backend it runs. Each model is small enough to solve by hand, and the
/// hand's arithmetic stands beside it.</summary>
/// <param name="backend">The backend that is judged.</param>
public abstract class SolverContract(Backend backend)
{
    private const double Open = double.PositiveInfinity;

    private static readonly TimeSpan Ample = TimeSpan.FromSeconds(20);

    private readonly OrToolsSolver solver = new(backend);

    private Solution Solve(Model model) => solver.Solve(model, Ample, CancellationToken.None);

    private void AssertBest(double objective, Model model)
    {
        var solution = Solve(model);
        Assert.Equal(Outcome.Optimal, solution.Outcome);
        Assert.Equal(objective, solution.Objective, 1e-6);
        Assert.Null(model.Broken(solution.Values));
    }

    [Fact]
    public void Of_three_jars_the_two_that_fit_on_the_shelf_and_are_worth_most_are_taken() =>
        // Weights 3, 4, 5 on a shelf for 7, worth 4, 5, 6: {3, 4} weighs 7 and is worth 9; any other pair is too heavy.
        AssertBest(-9, SmallModels.Knapsack);

    [Fact]
    public void An_opening_price_is_paid_in_full_or_not_at_all() =>
        // 10 g are needed. Jar A: 5 to open, 1 a gram, holds 8: too small alone. Jar B: 12 to open, 0.5 a gram.
        // B alone 12 + 10 x 0.5 = 17; both 5 + 12 + 8 x 1 + 2 x 0.5 = 26 at the worst and 17 + 5 at the best: 17 it is.
        AssertBest(17, SmallModels.FixedCharge);

    [Fact]
    public void Two_pinches_never_make_five() =>
        // x + y >= 5 with x and y in 0..2.
        Assert.Equal(Outcome.Infeasible, Solve(SmallModels.TooFew).Outcome);

    [Fact]
    public void Pairs_of_whole_eggs_never_make_three() =>
        // 2 n = 3 has the solution 1.5, but no whole one.
        Assert.Equal(Outcome.Infeasible, Solve(SmallModels.OddPairs).Outcome);

    [Fact]
    public void What_is_infeasible_has_no_point_and_no_objective()
    {
        var solution = Solve(SmallModels.TooFew);
        Assert.False(solution.HasPoint);
        Assert.Empty(solution.Values);
        Assert.True(double.IsNaN(solution.Objective));
    }

    [Fact]
    public void Two_equalities_leave_one_point()
    {
        // x + y = 10 and x - y = 2: x = 6, y = 4.
        var solution = Solve(SmallModels.TwoEqualities);
        Assert.Equal(Outcome.Optimal, solution.Outcome);
        Assert.Equal(6, solution.Values[0], 1e-6);
        Assert.Equal(4, solution.Values[1], 1e-6);
    }

    [Fact]
    public void A_row_open_on_both_sides_holds_nothing_back() =>
        // Minimise -x with x in 0..3 and a row on x that has no limits: 3.
        AssertBest(-3, new Model([new("x", 0, 3, false, -1)], [new("free", [new(0, 1)], -Open, Open)]));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(4, 10)]
    [InlineData(17, 17)]
    public void A_line_is_nothing_or_at_least_its_sensible_minimum(double needed, double taken) =>
        // x is 0 or 10..50 and at least what is needed; every gram costs 1.
        AssertBest(taken, SmallModels.SemiContinuous(needed));

    [Fact]
    public void A_line_that_would_pass_its_ceiling_is_refused() =>
        // 0 or 10..50, and 51 are needed.
        Assert.Equal(Outcome.Infeasible, Solve(SmallModels.SemiContinuous(51)).Outcome);

    [Fact]
    public void An_empty_bowl_is_solved_by_nothing()
    {
        var solution = Solve(new Model([], []));
        Assert.Equal(Outcome.Optimal, solution.Outcome);
        Assert.Empty(solution.Values);
        Assert.Equal(0, solution.Objective);
    }

    [Fact]
    public void Without_rows_every_column_goes_to_its_cheap_end() =>
        // Costs 2 and -3 on 1..5 and 0..4: 2 x 1 - 3 x 4 = -10.
        AssertBest(-10, new Model([new("x", 1, 5, false, 2), new("y", 0, 4, false, -3)], []));

    [Fact]
    public void A_row_without_terms_that_asks_for_something_cannot_be_met() =>
        // 0 >= 1.
        Assert.Equal(Outcome.Infeasible, Solve(new Model([new("x", 0, 1, false, 1)], [new("nothing", [], 1, Open)])).Outcome);

    [Fact]
    public void A_fixed_column_keeps_its_value() =>
        // x = 7 at cost 2, y = 10 - x = 3 at cost 1: 17.
        AssertBest(17, new Model(
            [new("x", 7, 7, false, 2), new("y", 0, 100, false, 1)],
            [new("sum", [new(0, 1), new(1, 1)], 10, 10)]));

    [Fact]
    public void A_column_without_limits_is_held_by_its_rows_alone() =>
        // x free, -3 <= x <= 8 by a row: least is -3.
        AssertBest(-3, new Model([new("x", -Open, Open, false, 1)], [new("range", [new(0, 1)], -3, 8)]));

    [Fact]
    public void Seven_scoops_out_of_packets_of_two_take_four_packets() =>
        // 2 n >= 7, n whole and without a ceiling, each at cost 1: 3.5 is no number of packets, 4 is.
        AssertBest(4, new Model([new("packets", 0, Open, true, 1)], [new("scoops", [new(0, 2)], 7, Open)]));

    [Fact]
    public void Both_ends_of_a_row_hold()
    {
        var up = new Model([new("x", 0, 100, false, -1)], [new("range", [new(0, 2)], 3, 8)]);
        // 3 <= 2 x <= 8: at most 4, at least 1.5.
        AssertBest(-4, up);
        AssertBest(1.5, up with { Columns = [new("x", 0, 100, false, 1)] });
    }

    [Fact]
    public void A_cancelled_question_is_not_answered()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(() => solver.Solve(SmallModels.Knapsack, Ample, cancelled.Token));
    }

    [Fact]
    public void A_question_that_is_cancelled_on_the_way_is_not_answered()
    {
        using var cancelled = new CancellationTokenSource(TimeSpan.FromMilliseconds(100));
        // Some backends stop only at their own limit, so that is kept at two seconds; the model takes far longer.
        Assert.Throws<OperationCanceledException>(
            () => solver.Solve(HardModel.Of(6, 60), TimeSpan.FromSeconds(2), cancelled.Token));
    }

    [Fact]
    public async Task One_millisecond_is_kept_and_what_comes_of_it_is_told()
    {
        var solving = Task.Run(() => solver.Solve(HardModel.Of(6, 60), TimeSpan.FromMilliseconds(1), CancellationToken.None));
        // Ten seconds is ample for a busy machine; the model by itself takes far longer than that.
        var solution = await solving.WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Contains(solution.Outcome, new[] { Outcome.OutOfTime, Outcome.Feasible, Outcome.Optimal });
        Assert.Equal(solution.Outcome != Outcome.OutOfTime, solution.HasPoint);
    }

    [Fact]
    public void Who_runs_out_of_time_has_not_proven_that_there_is_no_way()
    {
        // Milliseconds of all lengths, on processors that are busy with the same: a clock may end a solve at any of its steps.
        var model = HardModel.Of(6, 60);
        Parallel.For(1, 120, new ParallelOptions { MaxDegreeOfParallelism = 4 }, milliseconds =>
            Assert.NotEqual(
                Outcome.Infeasible, solver.Solve(model, TimeSpan.FromMilliseconds(milliseconds), CancellationToken.None).Outcome));
    }

    [Fact]
    public void Two_hundred_solves_on_four_threads_agree_with_the_hand()
    {
        var outcomes = new Solution[200];
        Parallel.For(0, outcomes.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, index =>
            outcomes[index] = Solve((index % 4) switch
            {
                0 => SmallModels.Knapsack,
                1 => SmallModels.FixedCharge,
                2 => SmallModels.TooFew,
                _ => SmallModels.SemiContinuous(4),
            }));
        for (var index = 0; index < outcomes.Length; index++)
        {
            Assert.Equal(new[] { -9, 17, double.NaN, 10 }[index % 4], outcomes[index].Objective, 1e-6);
            Assert.Equal(index % 4 == 2 ? Outcome.Infeasible : Outcome.Optimal, outcomes[index].Outcome);
        }
    }

    [Theory]
    [MemberData(nameof(BrokenModels.All), MemberType = typeof(BrokenModels))]
    public void A_number_that_is_none_never_reaches_the_native_solver(string fault)
    {
        var model = BrokenModels.ByName[fault];
        Assert.Throws<ArgumentException>(() => Solve(model));
    }
}
