using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class TargetRefusalTests(StrictKitchen kitchen)
{
    [Theory]
    [InlineData("""{ "targets": [] }""", "targets", "'0'", "give 1 to 10")]
    [InlineData("""{ "targets": [{ "name": "sofder" }] }""", "targets[0].name", "'sofder'", "softer")]
    [InlineData("""{ "targets": [{ "name": "protien", "low": 5 }] }""", "targets[0].name", "'protien'", "protein")]
    [InlineData("""{ "targets": [{ "name": "protein" }] }""", "targets[0]", "'protein'", "at least one")]
    [InlineData("""{ "targets": [{ "name": "protein", "low": 5, "high": 4 }] }""", "targets[0].low", "'5'", "not above the high")]
    [InlineData("""{ "targets": [{ "name": "protein", "low": -5 }] }""", "targets[0].low", "'-5'", "0 or more")]
    [InlineData("""{ "targets": [{ "name": "protein", "high": "NaN" }] }""", "targets[0].high", "'NaN'", "0 or more")]
    [InlineData("""{ "targets": [{ "name": "softer", "high": 2 }] }""", "targets[0]", "'softer'", "leave low and high away")]
    [InlineData("""{ "targets": [{ "name": "price", "high": 2 }] }""", "targets[0].name", "butter", "--price")]
    [InlineData("""{ "targets": [{ "name": "yeast-mass", "high": 2 }] }""", "targets[0].name", "'yeast-mass'", "name another reading")]
    [InlineData("""{ "targets": [{ "name": "ingredients/buter", "high": 20 }] }""", "targets[0].name", "'ingredients/buter'", "ingredients/butter")]
    [InlineData("""{ "targets": [{ "name": "ingredients/butter" }] }""", "targets[0]", "'ingredients/butter'", "at least one")]
    public async Task A_target_that_cannot_be_aimed_at_is_refused(string json, string field, string value, string wayOut)
    {
        var request = JsonParser.Default.Parse<ReformulateFormulaRequest>(json);
        request.Formula = Bakes.Hazelnut;
        (await kitchen.Refuses(service => service.Reformulations.ReformulateFormulaAsync(request))).Names(field, value, wayOut);
    }

    [Theory]
    [InlineData("""{ "trades": [{ "reading": "protein" }] }""", "trades", "'1'", "give two")]
    [InlineData("""{ "trades": [{ "reading": "protein" }, { "reading": "protein" }] }""", "trades[1].reading", "'protein'", "against itself")]
    [InlineData("""{ "trades": [{ "reading": "protein" }, { "reading": "crumb" }] }""", "trades[1].reading", "'crumb'", "did you mean")]
    [InlineData("""{ "trades": [{ "reading": "protein" }, { "reading": "softer" }] }""", "trades[1].reading", "'softer'", "several readings")]
    [InlineData("""{ "trades": [{ "reading": "hydration" }, { "reading": "protein" }] }""", "trades[0].better", "'hydration'", "LOWER or HIGHER")]
    [InlineData("""{ "trades": [{ "reading": "gas", "better": "LOWER" }, { "reading": "protein" }] }""", "trades[0].reading", "'gas'", "name another")]
    [InlineData("""{ "trades": [{ "reading": "price" }, { "reading": "protein" }] }""", "trades[0].reading", "butter", "--price")]
    [InlineData("""{ "trades": [{ "reading": "salt" }, { "reading": "protein" }], "mostPoints": 1 }""", "mostPoints", "'1'", "give 2 to 50")]
    public async Task A_trade_that_cannot_be_made_is_refused(string json, string field, string value, string wayOut)
    {
        var request = JsonParser.Default.Parse<TraceFrontierRequest>(json);
        request.Formula = Bakes.Hazelnut;
        (await kitchen.Refuses(service => service.Reformulations.TraceFrontier(request))).Names(field, value, wayOut);
    }

    [Theory]
    [InlineData("""{ "ingredients": ["buttr"] }""", "ingredients[0]", "'buttr'", "butter")]
    [InlineData("""{ "ingredients": ["honey"] }""", "ingredients[0]", "'honey'", "name one of its lines")]
    [InlineData("""{ "habits": { "limits": [{ "balance": "salt", "high": 1 }] } }""", "habits.limits", "'1'", "check the swap by itself")]
    [InlineData("""{ "habits": { "surenessPercent": 90 } }""", "habits.surenessPercent", "'90'", "leave it away")]
    public async Task A_chart_of_what_is_not_there_is_refused(string json, string field, string value, string wayOut)
    {
        var request = JsonParser.Default.Parse<ChartSwapsRequest>(json);
        request.Formula = Bakes.Hazelnut;
        (await kitchen.Refuses(service => service.Substitutions.ChartSwaps(request))).Names(field, value, wayOut);
    }

    [Fact]
    public async Task A_limit_on_a_price_that_nobody_wrote_down_is_refused_by_every_question()
    {
        var habits = new Habits { Limits = { new ReadingLimit { Balance = "price", High = 5 } } };
        var vary = Bakes.WithoutTreeNuts(Bakes.Hazelnut);
        vary.Habits = habits;
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(vary))).Names("habits.limits", "butter", "--price");
        var check = Bakes.SodaSwap(Bakes.Hazelnut);
        check.Habits = habits;
        (await kitchen.Refuses(service => service.Balances.CheckSwapAsync(check))).Names("habits.limits", "potassium-bicarbonate", "--price");
        var replace = new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/cream-of-tartar", Habits = habits };
        (await kitchen.Refuses(service => service.Substitutions.ReplaceIngredientAsync(replace))).Names("habits.limits", "butter", "--price");
        var resize = new ResizeFormulaRequest { Formula = Bakes.Hazelnut, Factor = 2, Habits = habits };
        (await kitchen.Refuses(service => service.Reformulations.ResizeFormulaAsync(resize))).Names("habits.limits", "butter", "--price");
    }
}
