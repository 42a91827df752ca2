using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What is proven from a model by multipliers of its rows (Neumaier and Shcherbina 2004), each by hand.</summary>
public sealed class ProofTests
{
    private const double Open = double.PositiveInfinity;

    /// <summary>Half of x and y at least 1.5, x up to 1 at 2 a unit, y up to 1.5 at 3 a unit: y alone, at 4.5, is the least.</summary>
    private static readonly Model Needed = new(
        [new("x", 0, 1, false, 2), new("y", 0, 1.5, false, 3)], [new("needed", [new(0, 0.5), new(1, 1)], 1.5, Open)]);

    private readonly double[] reduced = new double[2];

    [Theory]
    // Without the row both are nothing. At 2 a unit of the row, 1.5 x 2: x at 2 - 1 and y at 3 - 2 still cost.
    [InlineData(0, 0, 2, 3)]
    [InlineData(2, 3, 1, 1)]
    // The price of y: 1.5 x 3. It is the best there is: y = 1.5 and x = 0 cost 4.5.
    [InlineData(3, 4.5, 0.5, 0)]
    // Too dear: 1.5 x 5 = 7.5, but then x would save 0.5 up to 1, y 2 up to 1.5: 7.5 - 0.5 - 3.
    [InlineData(5, 4, -0.5, -2)]
    // Turned round the row asks for nothing, since it has no upper end.
    [InlineData(-1, 0, 2, 3)]
    public void Any_price_of_a_row_proves_a_bound_and_the_right_one_the_best(double price, double bound, double ofX, double ofY)
    {
        var model = Reduction.Of(Needed)!;
        Assert.Equal(bound, model.LeastOf(model.Costs, [price], model.Low, model.High, reduced), 1e-12);
        Assert.Equal([ofX, ofY], reduced);
    }

    [Fact]
    public void A_price_that_pulls_towards_an_endless_side_is_crossed_out()
    {
        var model = Reduction.Of(Needed)!;
        double[] prices = [-1];
        model.LeastOf(model.Costs, prices, model.Low, model.High, reduced);
        Assert.Equal(0, prices[0]);
    }

    [Fact]
    public void A_column_without_end_that_would_save_proves_nothing_unless_by_the_last_digits_only()
    {
        // y - x <= 1 with neither limited above, y saving 1: at price -1 its cost is -1 + 1 = 0, and x costs 2 - 1.
        var model = Reduction.Of(new Model(
            [new("x", 0, Open, false, 2), new("y", 0, Open, false, -1)], [new("apart", [new(1, 1), new(0, -1)], -Open, 1)]))!;
        Assert.Equal(-1, Bound(-1), 1e-9);
        Assert.Equal(double.NegativeInfinity, Bound(0));
        Assert.Equal(double.NegativeInfinity, Bound(-0.9));
        Assert.Equal(-1, Bound(-1 + 1e-12), 1e-9);

        double Bound(double price) => model.LeastOf(model.Costs, [price], model.Low, model.High, reduced);
    }

    [Fact]
    public void Without_costs_a_sum_above_nothing_proves_that_no_point_is_there()
    {
        // x + y >= 5 out of twice 2 at most: 5 - 2 - 2 = 1 is missing.
        var model = Reduction.Of(SmallModels.TooFew)!;
        var units = model.Restoring.Units;
        Assert.Equal([2.0, 2.0], units);
        Assert.Equal(0.5, model.LeastOf(null, [1], model.Low, model.High, reduced));
        Assert.True(model.LeastOf(null, [-1], model.Low, model.High, reduced) <= 0);
    }

    [Fact]
    public void A_tableau_proves_the_cost_of_its_own_best_point()
    {
        var model = Reduction.Of(Needed)!;
        var tableau = new Tableau(model);
        var proof = new LinearProof(model, tableau, model.Low, model.High);
        // At rest: x = y = 0, the row's sum 0.
        Assert.Equal(0, proof.Prove());
        Assert.Equal([2, 3], proof.ReducedCosts.ToArray());
        // y takes the place of the row, which rests at its least: 1.5 at 3 a unit.
        tableau.Exchange(0, 1);
        Assert.Equal(4.5, proof.Prove(), 1e-12);
        Assert.Equal(4.5, proof.Bound, 1e-12);
        Assert.Equal([0.5, 0], proof.ReducedCosts.ToArray());
    }

    [Fact]
    public void A_point_is_believed_that_costs_what_is_proven_and_keeps_every_row()
    {
        var model = Reduction.Of(Needed)!;
        var tableau = new Tableau(model);
        tableau.Exchange(0, 1);
        var proof = new LinearProof(model, tableau, model.Low, model.High);
        Assert.True(proof.IsOf(4.5, [0, 1.5, 1.5], 1e-9));
        // Within the drift, and beyond it.
        Assert.True(proof.IsOf(4.5 + 4e-9, [0, 1.5, 1.5], 1e-9));
        Assert.False(proof.IsOf(4.5 + 6e-9, [0, 1.5, 1.5], 1e-9));
        Assert.False(proof.IsOf(4.5 - 6e-9, [0, 1.5, 1.5], 1e-9));
        // The row's sum is 1.5, whatever is said of it.
        Assert.False(proof.IsOf(4.5, [0, 1.5, 1.5 + 1e-6], 1e-9));
        Assert.False(proof.IsOf(4.5, [0, 1.5, 1.5 - 1e-6], 1e-9));
        // More drift is forgiven in the cost, and none in a row.
        Assert.True(proof.IsOf(4.5 + 1e-4, [0, 1.5, 1.5], 1e-3));
        Assert.False(proof.IsOf(4.5, [0, 1.5, 1.5 + 1e-6], 1e-3));
        Assert.False(proof.IsOf(double.NaN, [0, 1.5, 1.5], 1e-9));
        Assert.False(proof.IsOf(4.5, [0, double.NaN, 1.5], 1e-9));
    }

    [Fact]
    public void A_row_that_all_columns_together_do_not_reach_proves_that_nothing_is_there()
    {
        var model = Reduction.Of(SmallModels.TooFew)!;
        var proof = new LinearProof(model, new Tableau(model), model.Low, model.High);
        Assert.True(proof.IsNothing(0, isBelow: true, 1e-9));
        Assert.False(proof.IsNothing(0, isBelow: true, 0.5));
        Assert.False(proof.IsNothing(0, isBelow: false, 1e-9));
        // The other way round: at least 1 each is too much for a sum of 1 at most.
        var tooMuch = Reduction.Of(new Model(
            [new("x", 1, 2, false, 1), new("y", 1, 2, false, 1)], [new("most", [new(0, 1), new(1, 1)], -Open, 1)]))!;
        var other = new LinearProof(tooMuch, new Tableau(tooMuch), tooMuch.Low, tooMuch.High);
        Assert.True(other.IsNothing(0, isBelow: false, 1e-9));
        Assert.False(other.IsNothing(0, isBelow: true, 1e-9));
    }

    [Fact]
    public void That_nothing_is_there_is_proven_by_two_rows_where_neither_says_it_alone()
    {
        // x + y / 4 >= 2 and x - y >= 1 with x at most 1.5: then y is at least 2, and at most 0.5.
        var model = Reduction.Of(new Model(
            [new("x", 0, 1.5, false, 1), new("y", 0, 4, false, 1)],
            [new("sum", [new(0, 1), new(1, 0.25)], 2, Open), new("apart", [new(0, 1), new(1, -1)], 1, Open)]))!;
        var tableau = new Tableau(model);
        var proof = new LinearProof(model, tableau, model.Low, model.High);
        Assert.False(proof.IsNothing(0, isBelow: true, 1e-9));
        Assert.False(proof.IsNothing(1, isBelow: true, 1e-9));
        // With y given by the first row, the second one says it: x - y = x - 4 (sum - x) = 5 x - 4 sum <= 7.5 - 8.
        tableau.Exchange(0, 1);
        Assert.True(proof.IsNothing(1, isBelow: true, 1e-9));
    }
}
