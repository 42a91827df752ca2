using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class BalanceSettingsTests
{
    private static readonly BalanceSettings Tenth = new(
        "invented", "invented", "g / g", Band.Open, new Percent(90), new Percent(110), new Level(0.004), "too little", "too much", []);

    [Fact]
    public void The_loaf_that_works_is_the_middle_of_its_band() =>
        Assert.Equal(new Band(new Level(0.45), new Level(0.55)), Tenth.Around(new Level(0.5)), CloseTo);

    [Fact]
    public void A_loaf_without_a_reading_sets_no_band() => Assert.Equal(Band.Open, Tenth.Around(null));

    [Fact]
    public void A_loaf_that_has_none_of_it_lets_in_a_little() =>
        Assert.Equal(new Band(new Level(0), new Level(0.004)), Tenth.Around(new Level(0)));

    [Fact]
    public void A_side_without_a_share_is_open() =>
        Assert.Null((Tenth with { Above = null }).Around(new Level(0.5)).High);

    private static bool CloseTo(Band one, Band other) =>
        Math.Abs(one.Low!.Value.Value - other.Low!.Value.Value) < 1e-12 && Math.Abs(one.High!.Value.Value - other.High!.Value.Value) < 1e-12;
}
