using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What the tree says when it is not let come to its end.</summary>
public sealed class BranchAndBoundTests
{
    [Fact]
    public void Without_any_time_nothing_is_looked_at_and_nothing_said()
    {
        var search = Of(SmallModels.Knapsack, TimeSpan.Zero, CancellationToken.None);
        var end = search.Run()!.Value;
        Assert.Equal(Outcome.OutOfTime, end.Outcome);
        Assert.Empty(end.Values);
        Assert.Equal(0, search.Parts);
    }

    [Fact]
    public void Whoever_has_gone_is_not_searched_for() => Assert.Throws<OperationCanceledException>(
        () => Of(SmallModels.Knapsack, TimeSpan.FromMinutes(1), new CancellationToken(canceled: true)).Run());

    [Fact]
    public void What_is_proven_best_could_not_be_better()
    {
        var search = Of(SmallModels.FixedCharge, TimeSpan.FromMinutes(1), CancellationToken.None);
        Assert.Equal(Outcome.Optimal, search.Run()!.Value.Outcome);
        Assert.Equal(0, search.Gap);
        Assert.True(search.Parts > 0 && search.Steps > 0);
    }

    [Fact]
    public void A_point_that_was_found_in_time_is_told_with_how_much_better_another_could_be()
    {
        // Market splits: in parts every market is split evenly and costs nothing but the 10 that all costs, so what the point costs
        // beyond that could be saved. Twice as long until a point is found, whatever the machine.
        var hard = HardModel.Of(6, 60);
        var model = hard with { Columns = [.. hard.Columns, new Column("for_all", 1, 1, false, 10)] };
        for (var budget = TimeSpan.FromMilliseconds(50); ; budget *= 2)
        {
            var search = Of(model, budget, CancellationToken.None);
            if (search.Run() is not { Outcome: Outcome.Feasible } end)
            {
                Assert.True(budget < TimeSpan.FromMinutes(1), "no point was found");
                continue;
            }

            Assert.Null(model.Broken(end.Values, 1e-7));
            var cost = model.Objective(end.Values);
            Assert.True(cost > 10);
            Assert.Equal((cost - 10) / cost, search.Gap, 1e-6);
            return;
        }
    }

    private static BranchAndBound Of(Model model, TimeSpan budget, CancellationToken cancel) => new(model, Reduction.Of(model)!, budget, cancel);
}
