using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Balances;

public sealed class BalanceFilesTests
{
    private const string Hydration = "balances/hydration.json";

    private const string Leavening = "balances/leavening.json";

    private const string NetCarbohydrate = "balances/net-carbohydrate.json";

    [Theory]
    [InlineData(Hydration, "\"id\": \"hydration\"", "\"id\": \"hydratation\"", "^\"hydratation\"", "'hydratation'")]
    [InlineData(Hydration, "\"belowPercentOfReference\": 94", "\"belowPercentOfReference\": 194", "^194", "194")]
    [InlineData(Hydration, "\"abovePercentOfReference\": 106", "\"abovePercentOfReference\": 6", "\"abovePercentOfReference\": ^6", "6")]
    [InlineData(Hydration, "\"belowPercentOfReference\": 94", "\"belowPercent\": 94", "\"belowPercent\": ^94", "'belowPercent'")]
    [InlineData(Hydration, "\"sources\": [\"common-practice\"]", "\"sources\": [\"hearsay\"]", "^\"hearsay\"", "'hearsay'")]
    [InlineData(Hydration, "\"title\": \"hydration\"", "\"title\": null", "^{\n  \"id\"", "'title' is missing")]
    [InlineData(NetCarbohydrate, "\"erythritolTakenOffPercent\": 100", "\"erythritolTakenOffPercent\": 101", "^101", "101")]
    [InlineData(NetCarbohydrate, "\"alluloseTakenOffPercent\": 100", "\"alluloseTakenOffPercent\": null", "\"convention\": ^{", "'alluloseTakenOffPercent'")]
    [InlineData(NetCarbohydrate, "\"better\": \"lower\"", "\"better\": \"less\"", "^\"less\"", "'less'")]
    [InlineData(NetCarbohydrate, "\"newRoles\": [\"flour\"", "\"newRoles\": [\"flower\"", "^\"flower\"", "'flower'")]
    [InlineData(Leavening, "\"fixedLow\": 0.9", "\"fixedLow\": \"0.9\"", "^\"0.9\"", "a number")]
    public void A_band_that_cannot_be_read_is_shown_where_it_stands(string file, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(file, written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadBalances).AssertPointsAt(file, text, place, says);
    }

    [Fact]
    public void A_band_that_stands_on_its_head_is_refused()
    {
        // No loaf is at least 1.9 and at most 1.05: every question would be answered with no.
        using var folder = new SpoiltFolder();
        folder.Replace(Leavening, "\"fixedLow\": 0.9", "\"fixedLow\": 1.9");

        Assert.Equal(Leavening, Assert.Throws<DataFaultException>(folder.ReadBalances).File);
    }

    [Fact]
    public void A_missing_balance_is_named()
    {
        using var folder = new SpoiltFolder();
        folder.Remove(Hydration);

        Assert.Equal(Hydration, Assert.Throws<DataFaultException>(folder.ReadBalances).File);
    }

    [Fact]
    public void The_shipped_bands_are_read()
    {
        using var folder = new SpoiltFolder();
        var leavening = folder.ReadBalances().Leavening.Settings;

        Assert.Equal(0.90, leavening.Fixed.Low!.Value.Value);
        Assert.Equal(1.05, leavening.Fixed.High!.Value.Value);
    }
}
