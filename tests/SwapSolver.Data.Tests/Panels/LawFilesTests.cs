using SwapSolver.Data.Files;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Panels;

public sealed class LawFilesTests
{
    [Fact]
    public void Five_places_have_their_law() =>
        Assert.Equal(["au-nz", "ca", "eu", "uk", "us"], TestLabels.Laws.All.Select(law => law.Id));

    [Theory]
    [InlineData("us.json", "\"nutrient\": \"transFat\"", "\"nutrient\": \"transfats\"", "^\"transfats\"", "known are")]
    [InlineData("us.json", "\"name\": \"Sodium\", \"unit\": \"mg\"", "\"name\": \"Sodium\", \"unit\": \"g\"", "\"Sodium\", \"unit\": ^\"g\"", "which is mg")]
    [InlineData("us.json", "\"value\": 78", "\"value\": 0", "\"value\": ^0", "above 0")]
    [InlineData("us.json", "\"value\": 20, \"percent\": \"minerals\"", "\"value\": 20, \"percent\": \"ores\"", "\"percent\": ^\"ores\"", "known are")]
    [InlineData("eu.json", "\"name\": \"Fat\", \"unit\": \"g\", \"depth\": 0, \"required\": true, \"rounding\": \"panel\"", "\"name\": \"Fat\", \"unit\": \"g\", \"depth\": 0, \"required\": true, \"rounding\": \"up\"", "\"rounding\": ^\"up\"", "rounds nothing")]
    [InlineData("eu.json", "\"portion\": \"hundredGrams\"", "\"portion\": \"handful\"", "\"portion\": ^\"handful\"", "serving")]
    [InlineData("eu.json", "\"<{amount}\"", "\"<\"", "\"lessThan\": ^\"<\"", "{amount}")]
    [InlineData("eu.json", "\"energyMethods\": [\"eu-general\"]", "\"energyMethods\": [\"bomb\"]", "[^\"bomb\"]", "own-figures")]
    [InlineData("uk.json", "\"sameLinesAs\": \"eu\"", "\"sameLinesAs\": \"mars\"", "\"sameLinesAs\": ^\"mars\"", "no law")]
    [InlineData("ca.json", "\"allergenLists\": [\"us\", \"eu\"]", "\"allergenLists\": [\"us\", \"ca\"]", "\"us\", ^\"ca\"", "no list")]
    public void A_law_that_cannot_be_believed_is_shown_where_it_stands(string file, string before, string after, string place, string reason)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace($"labels/laws/{file}", before, after);

        Assert.Throws<DataFaultException>(() => folder.ReadLaws()).AssertPointsAt($"labels/laws/{file}", text, place, reason);
    }

    [Fact]
    public void A_small_amount_that_ends_nowhere_is_shown_where_it_stands()
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace("labels/laws/us.json", "{\"below\": 2, \"prints\": \"0\"}, {\"upTo\"", "{\"prints\": \"0\"}, {\"upTo\"");

        Assert.Throws<DataFaultException>(() => folder.ReadLaws()).AssertPointsAt("labels/laws/us.json", text, "^{\"prints\": \"0\"}", "below");
    }
}
