using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What the tree says when it is not let come to its end, and what it takes for as good.</summary>
public sealed class BranchAndBoundTests
{
    private const double Open = double.PositiveInfinity;

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

    [Fact]
    public void The_best_that_may_still_be_found_lies_in_the_next_part_or_in_one_that_was_set_aside()
    {
        PriorityQueue<Branch, double> open = new();
        var (below, above) = Branch.Whole.Cut(3, 0, 0.5);
        Assert.Equal(double.PositiveInfinity, BranchAndBound.LeastLeft(null, open));
        Assert.Equal(3, BranchAndBound.LeastLeft(below, open));
        open.Enqueue(above with { Least = 2 }, 2);
        open.Enqueue(above with { Least = 4 }, 4);
        Assert.Equal(2, BranchAndBound.LeastLeft(null, open));
        Assert.Equal(2, BranchAndBound.LeastLeft(below, open));
        Assert.Equal(1, BranchAndBound.LeastLeft(below with { Least = 1 }, open));
    }

    [Theory]
    // Half a packet costs nothing and none or a whole one 100; one is tried first. That none saves a two-hundred-millionth of that is not
    // worth a look, and a twenty-millionth is.
    [InlineData(100, 5e-7, 1)]
    [InlineData(100, 5e-6, 0)]
    // Of a hundredth it is not a share that counts, but a thousand-millionth.
    [InlineData(0.01, 5e-10, 1)]
    [InlineData(0.01, 5e-9, 0)]
    public void What_saves_less_than_the_last_digits_is_not_looked_for(double price, double saved, double packets)
    {
        var end = Search(Between(0.5, price, saved)).Run()!.Value;
        Assert.Equal((Outcome.Optimal, packets), (end.Outcome, end.Values[0]));
    }

    [Theory]
    // As dear on either side: below where no more than three tenths lie above the whole number, else above.
    [InlineData(0.2, 0)]
    [InlineData(0.4, 1)]
    [InlineData(1.2, 1)]
    [InlineData(1.4, 2)]
    public void Of_two_sides_alike_the_nearer_is_taken(double value, double packets) =>
        Assert.Equal(packets, Search(Between(value, 1, 0)).Run()!.Value.Values[0]);

    [Fact]
    public void What_is_whole_but_for_the_last_digits_is_looked_for_on_either_side()
    {
        // 0.2 mg are needed, out of a large jar at 1 or a small one at a half. In parts the large one costs a millionth, which is
        // nearly nothing, and without both there is none: by hand the small jar.
        var end = Search(ReducedByHand.Of(
            [(0, 300, 0), (0, 1, 1), (0, 1, 0), (0, 1, 0.5)],
            [1, 3],
            ([-1, 300, 0, 0], 0, Open),
            ([0, 0, -1, 1], 0, Open),
            ([1, 0, 1, 0], 0.0002, Open))).Run()!.Value;
        Assert.Equal(Outcome.Optimal, end.Outcome);
        Assert.Equal((0, 1), (end.Values[1], end.Values[3]));
    }

    [Fact]
    public void A_side_that_the_simplex_does_not_settle_is_not_given_up()
    {
        // Half a packet leaves the last row alone; with a whole one it asks for 0.8 of what the proof reads another entry of. A whole one
        // may be the best, so 'none' may not be answered.
        var model = ReducedByHand.Of(
            [(0, 1, 0), (0, 10, 1), (0, 10, 0.1), (0, 10, 0.1)],
            [0],
            ([2, 1, 0, 0], 1, Open),
            ([-2, 1, 0, 0], -1, Open),
            ([-2, 0, 1, 0.5], -1.2, Open));
        model.Entries[^1] = 2;
        Assert.Null(Search(model).Run());
    }

    [Fact]
    public void A_point_that_is_not_settled_once_it_is_made_whole_is_handed_on()
    {
        // A millionth of a packet would do for 0.2 mg, and keeps the last row by the way. Without it that asks for 5 mg of what the
        // proof reads another entry of.
        var model = ReducedByHand.Of(
            [(0, 300, 0), (0, 1, 1), (0, 1, 10), (0, 10, 1), (0, 10, 1)],
            [1],
            ([-1, 300, 0, 0, 0], 0, Open),
            ([1, 0, 1, 0, 0], 0.0002, Open),
            ([0, 10_000, 0, 1, 0.5], 0.005, Open));
        model.Entries[^1] = 2;
        Assert.Null(Search(model).Run());
    }

    [Fact]
    public void A_tree_that_grows_beyond_its_parts_is_handed_on()
    {
        var model = Between(0.5, 1, 0.1);
        var whole = Search(model);
        Assert.Equal(Outcome.Optimal, whole.Run()!.Value.Outcome);
        Assert.True(whole.Parts > 1);
        Assert.Null(Search(model, most: 1).Run());
        Assert.NotNull(Search(model, whole.Parts).Run());
    }

    /// <summary>Packets at 'saved' each, and a price that grows from nothing at the value to all of it at the whole numbers beside it.</summary>
    private static ReducedModel Between(double value, double price, double saved)
    {
        var (below, above) = (1 / (value - Math.Floor(value)), 1 / (Math.Ceiling(value) - value));
        return ReducedByHand.Of([(0, 3, saved), (0, 100, price)], [0], ([below, 1], below * value, Open), ([-above, 1], -above * value, Open));
    }

    private static BranchAndBound Search(ReducedModel reduced, int? most = null)
    {
        var model = new Model([.. Enumerable.Range(0, reduced.Columns).Select(index => new Column($"c{index}", 0, reduced.High[index], false, 0))], []);
        return new BranchAndBound(model, reduced, TimeSpan.FromMinutes(1), CancellationToken.None) { Most = most ?? int.MaxValue };
    }

    private static BranchAndBound Of(Model model, TimeSpan budget, CancellationToken cancel) => new(model, Reduction.Of(model)!, budget, cancel);
}
