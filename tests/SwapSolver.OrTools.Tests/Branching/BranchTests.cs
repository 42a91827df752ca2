using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>Whole eggs: a point with 2.4 of them lies in neither of the two parts it is cut into, and every whole number in one.</summary>
public sealed class BranchTests
{
    private const int Eggs = 0;
    private const int Packets = 1;

    private static readonly double[] Low = [0, 0];
    private static readonly double[] High = [9, 9];

    private readonly Relaxation relaxation;

    public BranchTests()
    {
        var model = new Model(
            [new("eggs", 0, 9, true, 1), new("packets", 0, 9, true, 1)],
            [new("enough", [new(Eggs, 1), new(Packets, 1)], 5, double.PositiveInfinity)]);
        relaxation = new Relaxation(model, Reduction.Of(model)!, CancellationToken.None);
    }

    [Fact]
    public void A_cut_between_two_and_three_eggs_leaves_two_at_most_or_three_at_least()
    {
        var (lower, upper) = Branch.Whole.Cut(5, Eggs, 2.4);
        Assert.Equal((2, 0.4), (lower.Limit, Math.Round(lower.Distance, 9)));
        Assert.Equal((3, 0.6), (upper.Limit, Math.Round(upper.Distance, 9)));
        Assert.All([lower, upper], part => Assert.Equal((5.0, 5.0, Eggs), (part.Bound, part.Least, part.Column)));
        AssertLimits(lower, (0, 2), (0, 9));
        AssertLimits(upper, (3, 9), (0, 9));
    }

    [Fact]
    public void A_part_of_a_part_keeps_the_limits_of_both()
    {
        var upper = Branch.Whole.Cut(5, Eggs, 2.4).Upper;
        AssertLimits(upper.Cut(6, Packets, 1.5).Lower, (3, 9), (0, 1));
        AssertLimits(upper.Cut(6, Eggs, 5.5).Lower, (3, 5), (0, 9));
        // A wider limit further down takes nothing back.
        AssertLimits(upper.Cut(6, Eggs, 0.5).Upper, (3, 9), (0, 9));
        AssertLimits(Branch.Whole.Cut(5, Eggs, 2.4).Lower.Cut(6, Eggs, 7.5).Lower, (0, 2), (0, 9));
    }

    [Fact]
    public void What_was_narrowed_in_a_part_holds_in_all_parts_of_it()
    {
        var narrowed = Branch.Whole.Cut(5, Eggs, 2.4).Upper with { Narrowed = [(Packets, 1, 4), (Eggs, 0, 7)] };
        AssertLimits(narrowed, (3, 7), (1, 4));
        AssertLimits(narrowed.Cut(6, Packets, 2.5).Upper, (3, 7), (3, 4));
        AssertLimits(Branch.Whole with { Narrowed = [(Packets, 2, 3)] }, (0, 9), (2, 3));
    }

    [Fact]
    public void A_value_that_is_whole_but_for_the_last_digits_is_cut_beside_itself_by_no_less_than_a_millionth()
    {
        var (lower, upper) = Branch.Whole.Cut(5, Eggs, 3);
        Assert.Equal((3.0, 4.0), (lower.Limit, upper.Limit));
        Assert.Equal(PseudoCosts.LeastDistance, lower.Distance);
        Assert.Equal(1, upper.Distance);
        Assert.Equal(PseudoCosts.LeastDistance, Branch.Whole.Cut(5, Eggs, 4 - 1e-9).Upper.Distance);
    }

    private void AssertLimits(Branch part, (double Low, double High) eggs, (double Low, double High) packets)
    {
        part.Apply(relaxation, Low, High);
        Assert.Equal(eggs, (relaxation.Low[Eggs], relaxation.High[Eggs]));
        Assert.Equal(packets, (relaxation.Low[Packets], relaxation.High[Packets]));
    }
}
