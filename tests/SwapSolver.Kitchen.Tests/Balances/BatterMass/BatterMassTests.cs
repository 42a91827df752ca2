using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class BatterMassTests
{
    private static readonly BatterMass Rule = TestKitchen.Bakehouse.Balances.BatterMass;

    private static readonly Formula Reference = Bowl.Of(("almond-meal", 200), ("water", 200));

    [Fact]
    public void The_batter_is_counted_by_the_batter_of_the_loaf_that_works()
    {
        // 420 g against 400 g.
        var variant = Bowl.Of(("almond-meal", 200), ("water", 220));

        Assert.Equal(1.05, Rule.Read(variant, Reference, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void The_same_tin_holds_five_percent_more_or_less() =>
        Assert.Equal(new Band(new Level(0.95), new Level(1.05)), Rule.Band(Reference, Draws.Typical));
}
