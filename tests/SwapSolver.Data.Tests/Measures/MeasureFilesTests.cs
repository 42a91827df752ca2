using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Measures;

public sealed class MeasureFilesTests
{
    [Theory]
    [InlineData("measures/units.json", "\"millilitres\": 236.5882365", "\"millilitres\": 0", "\"millilitres\": ^0", "0 must be above 0")]
    [InlineData("measures/units.json", "\"unit\": \"cup\"", "\"unti\": \"cup\"", "\"unti\": ^\"cup\"", "'unti'")]
    [InlineData("measures/units.json", "\"centilitres\"", "\"cup\"", "\"centilitre\", ^\"cup\"", "'cup' stands twice")]
    [InlineData("measures/fillings.json", "\"dipped\", \"scooped\"", "\"dipped\", \"sifted\"", "\"dipped\", ^\"sifted\"", "stands twice")]
    [InlineData("measures/pieces.json", "\"ingredient\": \"gelatin\"", "\"ingredient\": \"gelatyn\"", "\"ingredient\": ^\"gelatyn\"", "'gelatyn' is not an ingredient")]
    [InlineData("measures/names.json", "\"ingredient\": \"xylitol\"", "\"ingredient\": \"xylytol\"", "\"ingredient\": ^\"xylytol\"", "'xylytol' is not an ingredient")]
    [InlineData("measures/names.json", "\"birch sugar\"", "\"besan\"", "\"names\": [^\"besan\"", "'besan' stands twice")]
    public void A_spoilt_measure_is_shown_where_it_stands(string file, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(file, written, spoilt);
        var fault = Assert.Throws<DataFaultException>(folder.ReadMeasures);
        fault.AssertPointsAt(file, text, place, says);
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        using var folder = new SpoiltFolder();
        folder.Remove("measures/names.json");
        Assert.Equal("measures/names.json", Assert.Throws<DataFaultException>(folder.ReadMeasures).File);
    }
}
