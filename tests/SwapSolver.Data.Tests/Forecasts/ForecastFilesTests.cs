using SwapSolver.Data.Files;
using SwapSolver.Data.Tests.Ingredients;

namespace SwapSolver.Data.Tests.Forecasts;

public sealed class ForecastFilesTests
{
    private const string Acidity = "forecasts/acidity.json";

    private const string Rise = "forecasts/rise.json";

    [Theory]
    [InlineData(Acidity, "\"sourBelowPh\": { \"low\": 5.0", "\"sourBelowPh\": { \"low\": 6.0", "\"sourBelowPh\": ^{", "in order")]
    [InlineData(Acidity, "\"titratedToPh\"", "\"titratedTo\"", "\"titratedTo\": ^{", "'titratedTo'")]
    [InlineData(Acidity, "\"low\": 7.3, \"typical\": 7.5", "\"low\": 4.3, \"typical\": 7.5", "\"low\": ^4.3", "between 5 and 12")]
    [InlineData(Rise, "\"low\": 5, \"typical\": 10, \"high\": 15", "\"low\": 5, \"typical\": 10, \"high\": 150", "\"high\": ^150", "between 0.1 and 99")]
    [InlineData(Rise, "\"leastPercent\": 12", "\"leastPercent\": 0", "\"leastPercent\": ^0", "'leastPercent'")]
    [InlineData(Rise, "\"source\": \"powder-floor-canada\"", "\"source\": \"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    public void What_cannot_be_believed_is_shown_where_it_stands(string file, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(file, written, spoilt);

        Assert.Throws<DataFaultException>(() =>
        {
            _ = folder.ReadAcidity();
            _ = folder.ReadRise();
        }).AssertPointsAt(file, text, place, says);
    }

    [Fact]
    public void Every_colour_that_needs_alkali_has_its_pH()
    {
        using var folder = new SpoiltFolder();
        var kinds = ShippedPantry.Pantry.Ingredients
            .SelectMany(ingredient => ingredient.Behaviours)
            .Select(behaviour => behaviour.Kind)
            .Where(kind => kind.EndsWith("-with-alkali", StringComparison.Ordinal))
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ToList();

        Assert.NotEmpty(kinds);
        Assert.Equal(kinds, folder.ReadAcidity().ColoursFromPh.Keys.Order(StringComparer.Ordinal));
    }
}
