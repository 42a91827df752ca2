using SwapSolver.OrTools.Branching;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What cuts have cost, a unit, and what they will likely cost: Achterberg, Koch and Martin 2005, the figures by hand.</summary>
public sealed class PseudoCostsTests
{
    private const double Near = 1e-12;

    private readonly PseudoCosts costs = new(2);

    [Fact]
    public void A_column_is_known_once_both_of_its_sides_were_tried()
    {
        Assert.False(costs.Knows(0));
        costs.Learn(Cut(0, 2.4).Lower, 1);
        Assert.False(costs.Knows(0));
        costs.Learn(Cut(0, 2.4).Upper, 1);
        Assert.True(costs.Knows(0));
        Assert.False(costs.Knows(1));
        costs.Learn(Cut(1, 2.4).Upper, 1);
        Assert.False(costs.Knows(1));
    }

    [Fact]
    public void A_cut_is_judged_by_the_mean_of_what_a_unit_has_cost_on_either_side()
    {
        // Down by 0.4 for 0.8 and for 1.6: 2 and 4 a unit, 3 in the mean. Up by 0.6 for 3: 5 a unit.
        costs.Learn(Cut(0, 2.4).Lower, 0.8);
        costs.Learn(Cut(0, 2.4).Lower, 1.6);
        costs.Learn(Cut(0, 2.4).Upper, 3);
        // At 7.5 both sides are half a unit away: 1.5 times 2.5.
        Assert.Equal(3.75, costs.Score(0, 7.5), Near);
        // At 7.2: 0.2 x 3 down, 0.8 x 5 up.
        Assert.Equal(0.6 * 4, costs.Score(0, 7.2), Near);
    }

    [Fact]
    public void Nothing_known_counts_the_same_for_all_and_most_in_the_middle()
    {
        Assert.Equal(0.05 * 0.05, costs.Score(1, 0.5), Near);
        Assert.True(costs.Score(1, 0.5) > costs.Score(1, 0.3));
        Assert.Equal(costs.Score(0, 0.3), costs.Score(1, 0.7), Near);
    }

    [Fact]
    public void A_cut_that_seems_to_save_is_taken_for_one_that_costs_nothing()
    {
        costs.Learn(Cut(0, 2.5).Lower, -1);
        costs.Learn(Cut(0, 2.5).Lower, 1);
        costs.Learn(Cut(0, 2.5).Upper, 1);
        // Down 0 and 2 a unit, 1 in the mean; up 2.
        Assert.Equal(0.5 * 1, costs.Score(0, 0.5), Near);
    }

    [Fact]
    public void A_side_that_costs_nothing_does_not_hide_what_the_other_costs()
    {
        Assert.True(PseudoCosts.Score(0, 4) > PseudoCosts.Score(0, 3));
        Assert.True(PseudoCosts.Score(4, 0) > PseudoCosts.Score(3, 0));
        Assert.Equal(PseudoCosts.Score(0, 4), PseudoCosts.Score(4, 0));
        Assert.Equal(12, PseudoCosts.Score(3, 4));
        // Both sides a little beat one side a good deal.
        Assert.True(PseudoCosts.Score(0.1, 0.1) > PseudoCosts.Score(0, 100));
    }

    private static (Branch Lower, Branch Upper) Cut(int column, double value) => Branch.Whole.Cut(0, column, value);
}
