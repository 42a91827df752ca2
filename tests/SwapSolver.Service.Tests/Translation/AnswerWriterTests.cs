using System.Text.Json;
using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Translation;

/// <summary>Scripts read these fields by name; the contract fixes them.</summary>
[Collection(OpenKitchen.Name)]
public sealed class AnswerWriterTests(OpenKitchen kitchen)
{
    private static readonly JsonFormatter Formatter = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true));

    private static readonly string[] NutritionFields =
    [
        "energyKcal", "fatG", "saturatedFatG", "carbohydrateG", "fibreG", "sugarsG", "polyolsG", "proteinG", "sodiumMg", "netCarbsG", "waterG", "massG",
    ];

    [Fact]
    public async Task Balance_gives_every_field_that_scripts_read()
    {
        var json = Json(await Bakes.Balance(kitchen.Service, Bakes.Hazelnut));
        Readings(json.GetProperty("readings"));
        foreach (var portion in new[] { "perSlice", "per100g" })
        {
            var facts = json.GetProperty("nutrition").GetProperty(portion);
            Assert.All(NutritionFields, field => Assert.Equal(JsonValueKind.Number, facts.GetProperty(field).ValueKind));
        }
    }

    [Fact]
    public async Task Variant_gives_every_field_that_scripts_read()
    {
        var json = Json(await Bakes.Vary(kitchen.Service, Bakes.Hazelnut));
        Answers(json.GetProperty("answers"));
        Assert.Equal(0, json.GetProperty("conflict").GetArrayLength());
    }

    [Fact]
    public async Task Resize_gives_every_field_that_scripts_read() =>
        Answers(Json(await Bakes.Resize(kitchen.Service, Bakes.Hazelnut)).GetProperty("answers"));

    [Fact]
    public async Task Check_gives_every_field_that_scripts_read()
    {
        var json = Json(await Bakes.Check(kitchen.Service, Bakes.Hazelnut));
        Assert.Contains(json.GetProperty("verdict").GetString(), new[] { "BALANCES", "BALANCES_WITH_REPAIR", "DOES_NOT_BALANCE" });
        Readings(json.GetProperty("readings"));
        Answer(json.GetProperty("repair"));
    }

    [Fact]
    public async Task No_gives_every_field_that_scripts_read()
    {
        var habits = new Habits { Limits = { new ReadingLimit { Balance = "net-carbohydrate", High = 0.0001 } } };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Habits = habits });
        var json = Json(response);
        Assert.Equal(0, json.GetProperty("answers").GetArrayLength());
        var conflicts = json.GetProperty("conflict").EnumerateArray().ToList();
        var carbohydrate = conflicts.Single(conflict => conflict.GetProperty("wish").GetString() == "net-carbohydrate");
        Assert.True(carbohydrate.GetProperty("relaxedValue").GetDouble() > 0.0001);
        Answer(json.GetProperty("nearest"));
    }

    private static JsonElement Json(IMessage message) => JsonDocument.Parse(Formatter.Format(message)).RootElement;

    private static void Answers(JsonElement answers)
    {
        Assert.InRange(answers.GetArrayLength(), 1, 3);
        Assert.All(answers.EnumerateArray(), Answer);
    }

    private static void Answer(JsonElement answer)
    {
        Assert.All(answer.GetProperty("formula").GetProperty("lines").EnumerateArray(), line =>
        {
            Assert.StartsWith("ingredients/", line.GetProperty("ingredient").GetString(), StringComparison.Ordinal);
            Assert.True(line.GetProperty("grams").GetDouble() > 0);
        });
        Readings(answer.GetProperty("readings"));
        Assert.All(answer.GetProperty("changes").EnumerateArray(), change =>
        {
            Assert.StartsWith("ingredients/", change.GetProperty("ingredient").GetString(), StringComparison.Ordinal);
            Assert.NotEqual(change.GetProperty("beforeGrams").GetDouble(), change.GetProperty("afterGrams").GetDouble());
            Assert.NotEmpty(change.GetProperty("reason").GetString()!);
        });
        Assert.NotEqual(0, answer.GetProperty("cautions").GetArrayLength());
        Assert.InRange(answer.GetProperty("chanceOfBalance").GetDouble(), 0, 1);
        Assert.Equal(JsonValueKind.Array, answer.GetProperty("binding").ValueKind);
    }

    private static void Readings(JsonElement readings)
    {
        Assert.NotEqual(0, readings.GetArrayLength());
        Assert.All(readings.EnumerateArray(), reading =>
        {
            Assert.NotEmpty(reading.GetProperty("balance").GetString()!);
            Assert.All(new[] { "value", "low", "high" }, field => Assert.Equal(JsonValueKind.Number, reading.GetProperty(field).ValueKind));
            Assert.Contains(reading.GetProperty("standing").GetString(), new[] { "INSIDE", "BELOW", "ABOVE" });
        });
        Assert.Contains(readings.EnumerateArray(), reading =>
            reading.TryGetProperty("band", out var band) && band.TryGetProperty("low", out _) && band.TryGetProperty("high", out _));
    }
}
