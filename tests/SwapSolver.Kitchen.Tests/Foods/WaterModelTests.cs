using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Foods;

public sealed class WaterModelTests
{
    /// <summary>Round figures, so that the sums can be made by hand.</summary>
    private static readonly WaterModel Model = new(
        new Range(2, 4, 6), new Range(1, 1, 1), new Range(0, 0.5, 1), new Range(0.25, 0.5, 1), new Grams(50), "invented");

    [Fact]
    public void Fibre_protein_and_starch_each_hold_their_own()
    {
        var held = Model.Centrifuge(new Range(10, 20, 30), new Range(10, 10, 10), new Range(0, 40, 50));

        Assert.Equal((0.3, 1.1, 2.4), (Math.Round(held.Low, 12), Math.Round(held.Typical, 12), Math.Round(held.High, 12)));
        var batter = Model.Batter(held);
        Assert.Equal((0.075, 0.55, 2.4), (Math.Round(batter.Low, 12), Math.Round(batter.Typical, 12), Math.Round(batter.High, 12)));
    }

    [Fact]
    public void A_dry_food_binds_water_and_a_wet_one_none()
    {
        var dry = Shelf.Of(Shelf.Bag(Shelf.Flour)).RangeOf(Fact.WaterBound)!.Value;
        Assert.True(dry.Low > 0 && dry.Low < dry.Typical && dry.Typical < dry.High);

        var wet = Shelf.Flour.SetItem(Fact.Water, Shelf.Rules.Spreads[Fact.Water].Of(Fact.Water, Shelf.Rules.Water.WetFrom.Value, "invented"));
        Assert.Equal(Range.Zero, Shelf.Of(Shelf.Bag(wet)).RangeOf(Fact.WaterBound));
        Assert.Equal(Range.Zero, Shelf.Of(Shelf.Bag(wet)).RangeOf(Fact.WaterBoundCentrifuge));
    }

    [Fact]
    public void Fibre_that_is_not_known_makes_the_guess_wider_at_both_ends()
    {
        var known = Shelf.Of(Shelf.Bag(Shelf.Flour)).RangeOf(Fact.WaterBoundCentrifuge)!.Value;
        var unknown = Shelf.Of(Shelf.Bag(Shelf.Flour.Remove(Fact.Fibre))).RangeOf(Fact.WaterBoundCentrifuge)!.Value;

        Assert.True(unknown.Low < known.Low && unknown.High > known.High);
    }

    [Fact]
    public void More_fibre_in_place_of_starch_binds_more()
    {
        var little = Shelf.Of(Shelf.Bag(Shelf.Flour.SetItem(Fact.Fibre, Shelf.Rules.Spreads[Fact.Fibre].Of(Fact.Fibre, 5, "invented"))));
        var much = Shelf.Of(Shelf.Bag(Shelf.Flour.SetItem(Fact.Fibre, Shelf.Rules.Spreads[Fact.Fibre].Of(Fact.Fibre, 50, "invented"))));

        Assert.True(much.RangeOf(Fact.WaterBound)!.Value.Typical > little.RangeOf(Fact.WaterBound)!.Value.Typical);
    }
}
