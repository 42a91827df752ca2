using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Translation;

[Collection(StrictKitchen.Name)]
public sealed class FormulaReaderTests(StrictKitchen kitchen)
{
    private const string OneLine = """{ "ingredient": "ingredients/almond-meal", "grams": 200 }""";

    [Theory]
    [InlineData("""{ "slices": 12 }""", "formula.lines", "no lines", "give at least one ingredient")]
    [InlineData("""{ "lines": [{ "ingredient": "ingredients/water", "grams": 0 }], "slices": 12 }""", "formula.lines", "0 g", "1 g or more")]
    [InlineData("""{ "lines": [{ "ingredient": "ingredients/almonds-ground", "grams": 200 }], "slices": 12 }""", "formula.lines[0].ingredient", "ingredients/almonds-ground", "almond-meal")]
    [InlineData("""{ "lines": [{ "ingredient": "", "grams": 200 }], "slices": 12 }""", "formula.lines[0].ingredient", "missing", "name it")]
    [InlineData("""{ "lines": [{ "ingredient": "ingredients/almond-meal" }], "slices": 12 }""", "formula.lines[0].grams", "almond-meal", "give 'grams'")]
    public Task A_formula_without_a_batter_is_refused(string json, string field, string value, string wayOut) =>
        RefusedByEveryQuestion(json, field, value, wayOut);

    [Theory]
    [InlineData("-5", "-5")]
    [InlineData("-0.001", "-0.001")]
    [InlineData("100001", "100001")]
    [InlineData("1e300", "1E+300")]
    [InlineData("\"NaN\"", "NaN")]
    [InlineData("\"Infinity\"", "Infinity")]
    [InlineData("\"-Infinity\"", "-Infinity")]
    public Task Grams_that_no_scale_shows_are_refused(string grams, string value) => RefusedByEveryQuestion(
        $$"""{ "lines": [{{OneLine}}, { "ingredient": "ingredients/water", "grams": {{grams}} }], "slices": 12 }""",
        "formula.lines[1].grams",
        $"'{value}'",
        "give 0 to 100000 g");

    [Theory]
    [InlineData("0", "'0'", "give 1 to 1000")]
    [InlineData("-3", "'-3'", "give 1 to 1000")]
    [InlineData("1001", "'1001'", "give 1 to 1000")]
    [InlineData("2147483647", "'2147483647'", "give 1 to 1000")]
    [InlineData("null", "missing", "say how many slices")]
    public Task A_loaf_that_nobody_can_slice_so_is_refused(string slices, string value, string wayOut) => RefusedByEveryQuestion(
        $$"""{ "lines": [{{OneLine}}], "slices": {{slices}} }""", "formula.slices", value, wayOut);

    [Theory]
    [InlineData("\"oven\": { \"celsius\": 20 }", "formula.oven.celsius", "'20'", "give 50 to 350")]
    [InlineData("\"oven\": { \"celsius\": 900 }", "formula.oven.celsius", "'900'", "give 50 to 350")]
    [InlineData("\"oven\": { \"celsius\": \"NaN\" }", "formula.oven.celsius", "'NaN'", "give 50 to 350")]
    [InlineData("\"bakeLossPercent\": -1", "formula.bakeLossPercent", "'-1'", "give 0 to 60")]
    [InlineData("\"bakeLossPercent\": 61", "formula.bakeLossPercent", "'61'", "give 0 to 60")]
    [InlineData("\"bakeLossPercent\": \"NaN\"", "formula.bakeLossPercent", "'NaN'", "give 0 to 60")]
    [InlineData("\"shape\": { \"tin\": { \"lengthMm\": 0, \"widthMm\": 100, \"heightMm\": 60 } }", "formula.shape.tin.lengthMm", "'0'", "more than 0")]
    [InlineData("\"shape\": { \"tin\": { \"lengthMm\": 200, \"widthMm\": -1, \"heightMm\": 60 } }", "formula.shape.tin.widthMm", "'-1'", "more than 0")]
    [InlineData("\"shape\": { \"tin\": { \"lengthMm\": 200, \"widthMm\": 100, \"heightMm\": \"Infinity\" } }", "formula.shape.tin.heightMm", "'Infinity'", "more than 0")]
    [InlineData("\"shape\": { \"freeForm\": { \"lengthMm\": \"NaN\" } }", "formula.shape.freeForm.lengthMm", "'NaN'", "more than 0")]
    [InlineData("\"shape\": { \"freeForm\": { \"widthMm\": 5000 } }", "formula.shape.freeForm.widthMm", "'5000'", "at most 1000")]
    [InlineData("\"shape\": { \"pieces\": { \"count\": 0 } }", "formula.shape.pieces.count", "'0'", "give 1 to 1000")]
    public Task An_oven_or_tin_that_no_kitchen_has_is_refused(string part, string field, string value, string wayOut) => RefusedByEveryQuestion(
        $$"""{ "lines": [{{OneLine}}], "slices": 12, {{part}} }""", field, value, wayOut);

    [Fact]
    public async Task A_system_of_measures_that_nobody_has_is_refused()
    {
        var formula = Bakes.From($$"""{ "lines": [{{OneLine}}], "slices": 12 }""");
        formula.System = (Line.Types.System)99;
        await RefusedByEveryQuestion(formula, "formula.system", "99", "AUSTRALIAN");
    }

    [Theory]
    [InlineData(201)]
    [InlineData(10_000)]
    public async Task A_bowl_of_more_than_two_hundred_lines_is_refused(int count)
    {
        var formula = new Formula { Slices = 12 };
        formula.Lines.AddRange(Enumerable.Repeat(new Line { Ingredient = "ingredients/water", Grams = 1 }, count));
        await RefusedByEveryQuestion(formula, "formula.lines", $"'{count}'", "give at most 200");
    }

    [Fact]
    public async Task Two_hundred_unknown_ingredients_are_refused_and_not_a_fault()
    {
        var formula = new Formula { Slices = 12 };
        formula.Lines.AddRange(Enumerable.Range(0, 200).Select(number => new Line { Ingredient = $"ingredients/{new string('q', 200)}-{number}", Grams = 1 }));
        await RefusedByEveryQuestion(formula, "formula.lines[0].ingredient", "qqq", "did you mean");
    }

    [Fact]
    public async Task Names_in_every_script_are_read_back_as_they_were_given()
    {
        var formula = new Formula { Slices = 12, Lines = { new Line { Ingredient = "ingredients/müsli \u30d1\u30f3 \U0001f35e\n", Grams = 1 } } };
        await RefusedByEveryQuestion(formula, "formula.lines[0].ingredient", "müsli \u30d1\u30f3 \U0001f35e", "did you mean");
    }

    [Fact]
    public async Task A_long_name_of_pictures_is_cut_between_two_of_them()
    {
        // A value is cut after 97 characters; 'ingredients/' is 12 long and each picture counts 2, so 97 falls inside one.
        var formula = new Formula { Slices = 12, Lines = { new Line { Ingredient = $"ingredients/{string.Concat(Enumerable.Repeat("\U0001f35e", 60))}", Grams = 1 } } };
        var refusal = await kitchen.Refuses(service => Bakes.Balance(service, formula));
        var description = Assert.Single(refusal.Violations).Description;
        Assert.DoesNotContain('\ufffd', description);
    }

    [Fact]
    public async Task Everything_that_is_wrong_is_said_at_once()
    {
        var formula = Bakes.From("""
            {
              "lines": [
                { "ingredient": "ingredients/almond-meal", "grams": -1 },
                { "ingredient": "ingredients/butterr", "grams": 10 },
                { "text": "1 1/2 tsp fresh yeast" }
              ],
              "slices": 0,
              "oven": { "celsius": 5 }
            }
            """);
        var refusal = await kitchen.Refuses(service => Bakes.Vary(service, formula));
        Assert.Equal(
            ["formula.lines[0].grams", "formula.lines[1].ingredient", "formula.lines[2].text", "formula.oven.celsius", "formula.slices"],
            refusal.Violations.Select(violation => violation.Field).Order(StringComparer.Ordinal));
    }

    private Task RefusedByEveryQuestion(string json, string field, string value, string wayOut) =>
        RefusedByEveryQuestion(Bakes.From(json), field, value, wayOut);

    private async Task RefusedByEveryQuestion(Formula formula, string field, string value, string wayOut)
    {
        (await kitchen.Refuses(service => Bakes.Balance(service, formula))).Names(field, value, wayOut);
        (await kitchen.Refuses(service => Bakes.Vary(service, formula))).Names(field, value, wayOut);
        (await kitchen.Refuses(service => Bakes.Resize(service, formula))).Names(field, value, wayOut);
        (await kitchen.Refuses(service => Bakes.Check(service, formula))).Names(field, value, wayOut);
    }
}
