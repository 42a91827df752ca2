using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>What a little more of a limit is worth: dual values of a program small enough for the hand.</summary>
public sealed class LinearSolutionTests
{
    private const double Open = double.PositiveInfinity;

    private const double Near = 1e-9;

    /// <summary>10 g out of two jars, of which the cheaper one has 6 g: 6 x 2 + 4 x 3 = 24.</summary>
    private static readonly Model TwoJars = new(
        [new("cheap", 0, 100, false, 2), new("dear", 0, 100, false, 3)],
        [new("needed", [new(0, 1), new(1, 1)], 10, Open), new("has", [new(0, 1)], -Open, 6), new("shelf", [new(0, 1), new(1, 1)], -Open, 50)]);

    [Fact]
    public void Another_gram_costs_what_the_dear_jar_asks_and_more_in_the_cheap_one_saves_the_difference()
    {
        var (solution, duals) = Solve(TwoJars);
        Assert.Equal((Outcome.Optimal, 24), (solution.Outcome, Math.Round(solution.Objective, 9)));
        Assert.Equal(6, solution.Values[0], Near);
        Assert.Equal(3, duals[0], Near);
        Assert.Equal(2 - 3, duals[1], Near);
        // There is room on the shelf: more of it saves nothing.
        Assert.Equal(0, duals[2], Near);
    }

    [Fact]
    public void Where_nothing_fits_nothing_is_worth_anything()
    {
        var (solution, duals) = Solve(SmallModels.TooFew);
        Assert.Equal(Outcome.Infeasible, solution.Outcome);
        Assert.Empty(duals);
    }

    [Fact]
    public void Of_whole_eggs_it_cannot_be_said_and_the_column_is_named() =>
        Assert.Contains("'n' is whole", Assert.Throws<ArgumentException>(() => Solve(SmallModels.OddPairs)).Message, StringComparison.Ordinal);

    [Fact]
    public void Numbers_that_are_none_are_refused_here_too() =>
        Assert.Throws<ArgumentException>(() => Solve(BrokenModels.ByName["cost is no number"]));

    [Fact]
    public void Whoever_has_gone_is_not_answered() => Assert.Throws<OperationCanceledException>(
        () => new OrToolsSolver().SolveLinear(TwoJars, TimeSpan.FromSeconds(20), new CancellationToken(canceled: true)));

    [Fact]
    public void A_price_that_falls_without_end_has_no_best_point()
    {
        var (solution, duals) = Solve(new Model([new("bought", 0, Open, false, -1), new("sold", 0, 5, false, 1)], [new("more", [new(0, 1), new(1, 1)], 1, Open)]));
        Assert.False(solution.HasPoint);
        Assert.Empty(duals);
    }

    private static LinearSolution Solve(Model model) => new OrToolsSolver().SolveLinear(model, TimeSpan.FromSeconds(20), CancellationToken.None);
}
