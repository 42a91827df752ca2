using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Forecasts;

public sealed class BakeFileTests
{
    private const string File = "forecasts/bake.json";

    [Theory]
    [InlineData("\"low\": 550, \"typical\": 700", "\"low\": 750, \"typical\": 700", "\"bakedDensityKgPerM3\": ^{", "in order")]
    // The slip of the pen that some printings have: fat would conduct 0.015 W/(m K) at 60 °C.
    [InlineData("1.8071e-1, -2.7604e-4", "1.8071e-1, -2.7604e-3", "\"conductivity\": ^[1.8071e-1", "between 0.05 and 1")]
    [InlineData("[9.9718e2, 3.1439e-3, -3.7574e-3]", "[9.9718e2, 3.1439e-3]", "\"density\": ^[9.9718e2", "three numbers")]
    [InlineData("\"low\": 71, \"typical\": 71, \"high\": 71", "\"low\": 60, \"typical\": 71, \"high\": 71", "\"low\": ^60", "between 71 and 100")]
    [InlineData("\"heightMm\": 51", "\"heightMm\": 5.1", "\"heightMm\": ^5.1", "'heightMm'")]
    [InlineData("\"stillAirPercent\"", "\"stillAir\"", "\"rack\": ^{", "'stillAirPercent'")]
    [InlineData("\"source\": \"sweat-1985-memory\"", "\"source\": \"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    public void What_cannot_be_believed_is_shown_where_it_stands(string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(File, written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadBake).AssertPointsAt(File, text, place, says);
    }
}
