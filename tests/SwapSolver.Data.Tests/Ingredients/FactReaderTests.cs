using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>Figures that cannot be true stop the start: a wrong fact would make wrong answers.</summary>
public sealed class FactReaderTests
{
    private const string Almonds = "ingredients/almond-meal.json";

    private const string Water = "\"waterGPer100G\": { \"low\": 3.52, \"typical\": 4.41, \"high\": 5.3,";

    [Theory]
    [InlineData("low above typical", Water, "\"waterGPer100G\": { \"low\": 4.5, \"typical\": 4.41, \"high\": 5.3,", "\"waterGPer100G\": ^{", "low 4.5, typical 4.41, high 5.3")]
    [InlineData("typical above high", Water, "\"waterGPer100G\": { \"low\": 3.52, \"typical\": 4.41, \"high\": 4.4,", "\"waterGPer100G\": ^{", "high 4.4")]
    [InlineData("below nothing", Water, "\"waterGPer100G\": { \"low\": -1, \"typical\": 4.41, \"high\": 5.3,", "\"waterGPer100G\": ^{", "low -1")]
    [InlineData("more than all of it", Water, "\"waterGPer100G\": { \"low\": 3.52, \"typical\": 4.41, \"high\": 105,", "\"high\": ^105", "105 g/100 g is above 100")]
    [InlineData("no low end", Water, "\"waterGPer100G\": { \"typical\": 4.41, \"high\": 5.3,", "\"waterGPer100G\": ^{", "'low' is missing")]
    [InlineData("a word for a number", Water, "\"waterGPer100G\": { \"low\": \"3.52\", \"typical\": 4.41, \"high\": 5.3,", "\"low\": ^\"3.52\"", "a number")]
    [InlineData("null for a number", Water, "\"waterGPer100G\": { \"low\": null, \"typical\": 4.41, \"high\": 5.3,", "\"waterGPer100G\": ^{", "'low'")]
    [InlineData("an unknown source of the range", "\"rangeSource\": \"range-moisture\"", "\"rangeSource\": \"range-moist\"", "^\"range-moist\"", "'range-moist'")]
    [InlineData("an unknown fact", "\"waterGPer100G\":", "\"waterGPerG\":", "\"waterGPerG\": ^{", "'waterGPerG'")]
    [InlineData("an unknown fact that is none by nature", "\"alcoholGPer100G\"", "\"spiritsGPer100G\"", "^\"spiritsGPer100G\"", "'spiritsGPer100G'")]
    [InlineData("a fact in both places", "\"alcoholGPer100G\"", "\"alcoholGPer100G\", \"waterGPer100G\"", "\"facts\": ^{", "'waterGPer100G' stands in 'facts' and in 'noneByNature'")]
    [InlineData("a fact in neither place", "    \"alcoholGPer100G\",\n", "", "\"facts\": ^{", "'alcoholGPer100G' is missing")]
    [InlineData("parts that add up to 110 g", "\"typical\": 21.15, \"high\": 22.9", "\"typical\": 31.15, \"high\": 32.9", "\"facts\": ^{", "add up to 110.01 g")]
    [InlineData("more sugar than carbohydrate", "{ \"low\": 3.36, \"typical\": 4.2, \"high\": 5.04", "{ \"low\": 3.36, \"typical\": 14.2, \"high\": 25.04", "\"facts\": ^{", "above its 21.55 g")]
    [InlineData("more saturated fat than fat", "{ \"low\": 3.34, \"typical\": 3.802, \"high\": 4.26", "{ \"low\": 3.34, \"typical\": 53.802, \"high\": 54.26", "\"facts\": ^{", "saturated fat")]
    public void A_figure_that_cannot_be_true_is_shown_where_it_stands(string fault, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(Almonds, written, spoilt);
        var thrown = Record.Exception(() => folder.ReadPantry());

        Assert.True(thrown is DataFaultException, $"{fault}: {thrown}");
        ((DataFaultException)thrown).AssertPointsAt(Almonds, text, place, says);
    }

    [Fact]
    public void A_gram_and_a_half_of_rounding_is_let_pass()
    {
        // 4.41 + 21.15 + 49.93 + 21.55 + 2.97 = 100.01; with 5.8 g of water 101.4.
        using var folder = new SpoiltFolder();
        folder.Replace(Almonds, Water, "\"waterGPer100G\": { \"low\": 3.52, \"typical\": 5.8, \"high\": 5.9,");

        Assert.True(folder.ReadPantry().TryGet("almond-meal", out _));
    }
}
