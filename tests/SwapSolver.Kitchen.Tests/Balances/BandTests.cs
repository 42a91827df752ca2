using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class BandTests
{
    [Theory]
    [InlineData(0.89, Standing.Below)]
    [InlineData(0.90, Standing.Inside)]
    [InlineData(1.00, Standing.Inside)]
    [InlineData(1.05, Standing.Inside)]
    [InlineData(1.06, Standing.Above)]
    public void A_reading_on_the_end_of_its_band_is_inside(double reading, Standing standing) =>
        Assert.Equal(standing, Of(0.90, 1.05).Of(new Level(reading)));

    [Theory]
    [InlineData(-1000)]
    [InlineData(0)]
    [InlineData(1000)]
    public void An_open_band_takes_any_reading(double reading) =>
        Assert.Equal(Standing.Inside, Band.Open.Of(new Level(reading)));

    [Theory]
    [InlineData(0, Standing.Inside)]
    [InlineData(0.000001, Standing.Above)]
    public void Where_nothing_is_let_in_a_trace_is_too_much(double reading, Standing standing) =>
        Assert.Equal(standing, Band.Nothing.Of(new Level(reading)));

    [Fact]
    public void Two_bands_together_keep_the_tighter_end_of_each() =>
        Assert.Equal(Of(0.95, 1.05), Of(0.90, 1.05).And(Of(0.95, 1.20)));

    [Fact]
    public void An_open_band_adds_nothing_to_another()
    {
        Assert.Equal(Of(0.90, 1.05), Of(0.90, 1.05).And(Band.Open));
        Assert.Equal(Of(0.90, 1.05), Band.Open.And(Of(0.90, 1.05)));
    }

    private static Band Of(double low, double high) => new(new Level(low), new Level(high));
}
