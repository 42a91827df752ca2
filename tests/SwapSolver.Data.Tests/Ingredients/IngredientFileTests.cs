using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>A bad ingredient file stops the start, and the baker sees where and why.</summary>
public sealed class IngredientFileTests
{
    private const string Almonds = "ingredients/almond-meal.json";

    private const string Eggs = "ingredients/egg-whole.json";

    [Theory]
    [InlineData("an id that is not the file's name", "\"id\": \"almond-meal\"", "\"id\": \"almond-flour\"", "^\"almond-flour\"", "'almond-flour'")]
    [InlineData("an unknown role", "\"role\": \"flour\"", "\"role\": \"flower\"", "^\"flower\"", "'flower'")]
    [InlineData("an unknown group", "\"groups\": [\"nuts\"]", "\"groups\": [\"nutz\"]", "^\"nutz\"", "'nutz'")]
    [InlineData("an unknown allergen", "\"us\": [\"tree-nuts\"]", "\"us\": [\"tree-nut\"]", "^\"tree-nut\"", "'tree-nut'")]
    [InlineData("a key that is not known", "\"name\": \"almond meal\"", "\"colour\": \"brown\", \"name\": \"almond meal\"", "\"colour\": ^\"brown\"", "'colour'")]
    [InlineData("a key of usage that is not known", "\"offered\": true", "\"offerred\": true", "\"offerred\": ^true", "'offerred'")]
    [InlineData("a key that stands twice", "\"name\": \"almond meal\"", "\"name\": \"almond meal\", \"name\": \"almonds\"", "^\"name\": \"almonds\"", "'name'")]
    [InlineData("carbohydrate on another basis", "by-difference-with-fibre", "available", "^\"available\"", "'available'")]
    [InlineData("a source that is in no bibliography", "\"source\": \"memory-trade\"", "\"source\": \"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    [InlineData("an unknown mark", "\"source\": \"memory-trade\", \"mark\": \"memory\"", "\"source\": \"memory-trade\", \"mark\": \"guess\"", "^\"guess\"", "'guess'")]
    [InlineData("a word in place of yes or no", "\"vegan\": true", "\"vegan\": \"yes\"", "^\"yes\"", "true or false")]
    [InlineData("a number in place of a name", "\"name\": \"almond meal\"", "\"name\": 12061", "\"name\": ^12061", "a text")]
    [InlineData("an empty name", "\"name\": \"almond meal\"", "\"name\": \"\"", "\"name\": ^\"\"", "a text")]
    [InlineData("a list in place of an object", "\"suits\": {", "\"suits\": [], \"suit\": {", "\"suit\": ^{", "'suit'")]
    [InlineData("a scale that weighs nothing", "\"scaleStepGrams\": 1", "\"scaleStepGrams\": 0", "\"scaleStepGrams\": ^0", "0 must be above 0")]
    [InlineData("a cup that weighs less than nothing", "\"grams\": 143", "\"grams\": -143", "\"grams\": ^-143", "-143")]
    [InlineData("an estimate whose ends are out of order", "\"grams\": 143", "\"lowGrams\": 150, \"highGrams\": 160, \"grams\": 143", "^{ \"amount\": 1, \"measure\": \"cup, whole\"", "in order")]
    [InlineData("a number that no machine holds", "\"grams\": 143", "\"grams\": 1e999", "\"grams\": ^1e999", "a number")]
    public void A_wrong_word_or_number_is_shown_where_it_stands(string fault, string written, string spoilt, string place, string says) =>
        AssertStops(Almonds, fault, written, spoilt, place, says);

    [Fact]
    public void An_unknown_egg_size_is_shown_where_it_stands() =>
        AssertStops(Eggs, "egg size", "\"JUMBO_US\"", "\"HUGE_US\"", "^\"HUGE_US\"", "'HUGE_US'");

    [Fact]
    public void A_missing_name_is_shown_at_the_object_that_lacks_it() =>
        AssertStops(Almonds, "name", "  \"name\": \"almond meal\",\n", string.Empty, "^{\n  \"id\"", "'name' is missing");

    private static void AssertStops(string file, string fault, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(file, written, spoilt);
        var thrown = Record.Exception(() => folder.ReadPantry());

        Assert.True(thrown is DataFaultException, $"{fault}: {thrown}");
        ((DataFaultException)thrown).AssertPointsAt(file, text, place, says);
    }
}
