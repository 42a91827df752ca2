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

    [Theory]
    [InlineData(0.90, 1.05)]
    [InlineData(-2, -1)]
    [InlineData(0, 0)]
    public void Its_ends_are_the_last_readings_inside(double low, double high)
    {
        var band = Of(low, high);
        var (lowest, highest) = band.Ends();
        Assert.True(lowest.Value <= low && high <= highest.Value, "an end lies inside the band");
        Assert.Equal(Standing.Inside, band.Of(lowest));
        Assert.Equal(Standing.Below, band.Of(new Level(double.BitDecrement(lowest.Value))));
        Assert.Equal(Standing.Inside, band.Of(highest));
        Assert.Equal(Standing.Above, band.Of(new Level(double.BitIncrement(highest.Value))));
    }

    [Fact]
    public void An_open_side_has_no_end() =>
        Assert.Equal((new Level(double.NegativeInfinity), new Level(double.PositiveInfinity)), Band.Open.Ends());

    [Fact]
    public void Two_bands_together_keep_the_tighter_end_of_each() =>
        Assert.Equal(Of(0.95, 1.05), Of(0.90, 1.05).And(Of(0.95, 1.20)));

    [Fact]
    public void An_open_band_adds_nothing_to_another()
    {
        Assert.Equal(Of(0.90, 1.05), Of(0.90, 1.05).And(Band.Open));
        Assert.Equal(Of(0.90, 1.05), Band.Open.And(Of(0.90, 1.05)));
    }

    [Fact]
    public void Two_bands_of_one_side_each_make_one_of_two() =>
        Assert.Equal(Of(0.90, 1.05), new Band(new Level(0.90), null).And(new Band(null, new Level(1.05))));

    [Fact]
    public void A_band_with_one_end_is_not_open()
    {
        Assert.True(Band.Open.IsOpen);
        Assert.False(new Band(new Level(1), null).IsOpen);
        Assert.False(new Band(null, new Level(1)).IsOpen);
    }

    [Theory]
    [InlineData(0.90 - 5e-7, Standing.Inside)]
    [InlineData(0.90 - 2e-6, Standing.Below)]
    [InlineData(1.05 + 5e-7, Standing.Inside)]
    [InlineData(1.05 + 2e-6, Standing.Above)]
    public void A_millionth_beyond_the_end_is_still_the_end(double reading, Standing standing) =>
        Assert.Equal(standing, Of(0.90, 1.05).Of(new Level(reading)));

    [Theory]
    [InlineData(200 - 1e-4, Standing.Inside)]
    [InlineData(200 - 4e-4, Standing.Below)]
    [InlineData(300 + 1e-4, Standing.Inside)]
    [InlineData(300 + 6e-4, Standing.Above)]
    public void Of_a_large_reading_a_millionth_is_more(double reading, Standing standing) =>
        Assert.Equal(standing, Of(200, 300).Of(new Level(reading)));

    [Fact]
    public void A_share_of_the_own_reading_follows_it_and_is_open_where_there_is_none()
    {
        // 90 % to 110 % of 2.
        var share = new OwnShare(new Percent(90), new Percent(110));
        var band = share.Of(new Level(2));

        Assert.Equal(1.8, band.Low!.Value.Value, 12);
        Assert.Equal(2.2, band.High!.Value.Value, 12);
        Assert.Equal(Band.Open, share.Of(null));
        Assert.Equal(Band.Open, new OwnShare(null, null).Of(new Level(2)));
    }

    private static Band Of(double low, double high) => new(new Level(low), new Level(high));
}
