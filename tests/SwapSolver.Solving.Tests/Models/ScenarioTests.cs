using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>What must be kept in a kitchen whose flour is drier than ours.</summary>
public sealed class ScenarioTests
{
    private const double Near = 1e-12;

    private static readonly Formula Paste = Bowl.Of(("almond-flour-blanched", 200), ("water", 100));

    private static readonly Balance Hydration = TestKitchen.Bakehouse.Balances.Find("hydration")!;

    private static readonly Draw Dry = static ingredient => FactSheet.Drawn(ingredient, static fact => fact == Fact.Water ? 0.0 : 0.5);

    private static double Own => Hydration.Read(Paste, Paste, Dry)!.Value.Value;

    [Fact]
    public void A_usual_band_lies_around_what_the_loaf_has_there()
    {
        Assert.True(Own < Hydration.Read(Paste, Paste, Draws.Typical)!.Value.Value);
        var band = Scenario.BandOf(new Hold("hydration", Hydration, Band.Nothing, FromCaller: false, IsAnchored: true), Paste, Dry);
        Assert.Equal(0.94 * Own, band.Low!.Value.Value, Near);
        Assert.Equal(1.06 * Own, band.High!.Value.Value, Near);
    }

    [Fact]
    public void A_figure_that_was_said_is_the_same_in_every_kitchen()
    {
        var said = new Band(new Level(1), new Level(2));
        Assert.Equal(said, Scenario.BandOf(new Hold("hydration", Hydration, said, FromCaller: true), Paste, Dry));
    }

    [Fact]
    public void A_share_is_of_what_the_loaf_has_there()
    {
        // A tenth moister than it is.
        var moister = new Hold("hydration", Hydration, Band.Nothing, FromCaller: true, IsAnchored: true) { Share = new OwnShare(new Percent(110), null) };
        var band = Scenario.BandOf(moister, Paste, Dry);
        Assert.Equal(1.1 * Own, band.Low!.Value.Value, Near);
        Assert.Null(band.High);
    }
}
