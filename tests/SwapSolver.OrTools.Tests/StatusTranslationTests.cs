using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>What a native solver says is not taken on trust.</summary>
public sealed class StatusTranslationTests
{
    [Fact]
    public void A_point_is_weighed_again_before_it_is_believed()
    {
        // 8 g of jar A and 2 g of jar B are the 10 g that are needed: 8 x 1 + 5 + 2 x 0.5 + 12 = 26.
        var point = StatusTranslation.Checked(SmallModels.FixedCharge, Outcome.Feasible, [8, 1, 2, 1]);
        Assert.Equal((Outcome.Feasible, 26), (point.Outcome, point.Objective));
        Assert.Contains(
            "'needed'", Assert.Throws<InvalidOperationException>(() => StatusTranslation.Checked(SmallModels.FixedCharge, Outcome.Optimal, [8, 1, 1, 1])).Message, StringComparison.Ordinal);
        Assert.Contains(
            "'jar_b'", Assert.Throws<InvalidOperationException>(() => StatusTranslation.Checked(SmallModels.FixedCharge, Outcome.Optimal, [8, 1, 2, 0])).Message, StringComparison.Ordinal);
    }
}
