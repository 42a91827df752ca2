using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

public sealed class BranchingContractTests() : SolverContract(Backend.Branching)
{
    [Fact]
    public async Task A_question_that_is_cancelled_frees_its_thread_long_before_its_own_limit()
    {
        using var cancelled = new CancellationTokenSource();
        var solving = Task.Run(() => new OrToolsSolver().Solve(HardModel.Of(6, 60), TimeSpan.FromMinutes(5), cancelled.Token));
        await Task.Delay(TimeSpan.FromMilliseconds(300));
        await cancelled.CancelAsync();
        // Ample for a busy machine; by its own limit it would take five minutes.
        await Assert.ThrowsAsync<OperationCanceledException>(() => solving.WaitAsync(TimeSpan.FromSeconds(20)));
    }

    [Fact]
    public void A_millionth_of_a_yes_pays_for_nothing()
    {
        // 300 g may move only where 'moved' is 1, at a price of 1; a gram brings 0.01. A 'moved' of 1e-6 would free 0.3 mg for
        // nothing: by hand, moving all is -3 + 1 = -2, moving nothing is 0.
        var model = new Model(
            [new("grams", 0, 300, false, -0.01), new("moved", 0, 1, true, 1)],
            [new("only_if_moved", [new(0, 1), new(1, -300)], double.NegativeInfinity, 0)]);
        var solution = new OrToolsSolver().Solve(model, TimeSpan.FromSeconds(20), CancellationToken.None);
        Assert.Equal(-2, solution.Objective, 1e-9);
        Assert.Equal(1, solution.Values[1]);
    }

    [Theory]
    // 0.2 mg at the least are a part of a yes of 7e-7, which is whole but for the last digits: they cost the whole yes all the same.
    [InlineData(0.0002, 0)]
    // Where none is asked for, the 0.0002 that they bring are not worth the 1 that the yes costs.
    [InlineData(0, 1)]
    public void A_trace_of_a_gram_costs_a_whole_yes(double least, double brings)
    {
        var model = new Model(
            [new("grams", least, least + 0.0002, false, -brings), new("moved", 0, 1, true, 1), new("nothing_of_it", 0, 1, true, 1)],
            [new("only_if_moved", [new(0, 1), new(1, -300)], double.NegativeInfinity, 0)]);
        var solution = new OrToolsSolver().Solve(model, TimeSpan.FromSeconds(20), CancellationToken.None);
        Assert.Equal(Outcome.Optimal, solution.Outcome);
        Assert.Equal(least > 0 ? 1 : 0, solution.Values[1]);
        Assert.Equal(least > 0 ? 1 : 0, solution.Objective, 1e-9);
    }

    [Fact]
    public void The_same_model_gives_the_same_point_to_the_last_bit()
    {
        var model = HardModel.Of(1, 14);
        var points = Enumerable.Range(0, 5).Select(_ => new OrToolsSolver().Solve(model, TimeSpan.FromSeconds(20), CancellationToken.None)).ToList();
        Assert.All(points, point => Assert.Equal(points[0].Values, point.Values));
        Assert.Equal(Outcome.Optimal, points[0].Outcome);
    }
}
