using System.Text.Json;
using System.Xml;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

public sealed class LinkedDataTests
{
    private static readonly Formula Baked = Loaf.Walnut with
    {
        BakeLoss = new Percent(11),
        Oven = new Oven(new Celsius(175), false),
        Shape = new Pieces(12),
        Steps = ["Heat the oven to 175 °C.", "Bake."],
    };

    [Fact]
    public void Durations_are_of_iso_8601_and_are_the_minutes_of_the_forecast()
    {
        var card = TestCards.Of(Baked);
        using var data = JsonDocument.Parse(TestCards.Printer.LinkedData(card));
        var cook = XmlConvert.ToTimeSpan(data.RootElement.GetProperty("cookTime").GetString()!);

        Assert.Equal(card.Bake!.TimeToCore!.Value.Value.Value, cook.TotalMinutes, 0.5);
        Assert.True(XmlConvert.ToTimeSpan(data.RootElement.GetProperty("totalTime").GetString()!) > cook);
    }

    [Fact]
    public void Nutrition_is_that_of_one_slice_and_has_units()
    {
        var card = TestCards.Of(Baked);
        using var data = JsonDocument.Parse(TestCards.Printer.LinkedData(card));
        var nutrition = data.RootElement.GetProperty("nutrition");

        Assert.Equal("NutritionInformation", nutrition.GetProperty("@type").GetString());
        Assert.Equal(FormattableString.Invariant($"{card.Loaf.Fat.Value / 12:0.##} g"), nutrition.GetProperty("fatContent").GetString());
        Assert.EndsWith(" kcal", nutrition.GetProperty("calories").GetString(), StringComparison.Ordinal);
        Assert.EndsWith(" mg", nutrition.GetProperty("sodiumContent").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_line_and_step_is_there_and_cautions_travel_with_them()
    {
        using var data = JsonDocument.Parse(TestCards.Printer.LinkedData(TestCards.Of(Baked)));
        var instructions = data.RootElement.GetProperty("recipeInstructions").EnumerateArray().ToList();

        Assert.Equal(Baked.Lines.Length, data.RootElement.GetProperty("recipeIngredient").GetArrayLength());
        Assert.Equal(["HowToStep", "HowToStep", "HowToSection"], instructions.Select(step => step.GetProperty("@type").GetString()));
        Assert.Contains(instructions[2].GetProperty("itemListElement").EnumerateArray(), tip => tip.GetProperty("text").GetString()!.Contains("71 °C", StringComparison.Ordinal));
        Assert.False(data.RootElement.TryGetProperty("suitableForDiet", out _), "a diet is a claim, and none is made");
    }
}
