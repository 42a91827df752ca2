using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Translation;

[Collection(StrictKitchen.Name)]
public sealed class HabitsReaderTests(StrictKitchen kitchen)
{
    [Theory]
    [InlineData("""{ "newIngredients": -1 }""", "habits.newIngredients", "'-1'", "give 0 to 5")]
    [InlineData("""{ "newIngredients": 6 }""", "habits.newIngredients", "'6'", "give 0 to 5")]
    [InlineData("""{ "answers": 0 }""", "habits.answers", "'0'", "give 1 to 3")]
    [InlineData("""{ "answers": 4 }""", "habits.answers", "'4'", "give 1 to 3")]
    [InlineData("""{ "scaleStepGrams": 0 }""", "habits.scaleStepGrams", "'0'", "give 0.1 to 50")]
    [InlineData("""{ "scaleStepGrams": -1 }""", "habits.scaleStepGrams", "'-1'", "give 0.1 to 50")]
    [InlineData("""{ "scaleStepGrams": 51 }""", "habits.scaleStepGrams", "'51'", "give 0.1 to 50")]
    [InlineData("""{ "scaleStepGrams": "NaN" }""", "habits.scaleStepGrams", "'NaN'", "give 0.1 to 50")]
    [InlineData("""{ "eggSize": 99 }""", "habits.eggSize", "99", "LARGE_US")]
    public Task A_habit_that_no_kitchen_has_is_refused(string habits, string field, string value, string wayOut) =>
        RefusedByEverySolve(habits, field, value, wayOut);

    [Theory]
    [InlineData("""{ "balance": "hydratoin", "low": 1 }""", ".balance", "'hydratoin'", "hydration")]
    [InlineData("""{ "balance": "", "low": 1 }""", ".balance", "not a balance", "did you mean")]
    [InlineData("""{ "balance": "net-carbohydrate" }""", "", "net-carbohydrate", "at least one")]
    [InlineData("""{ "balance": "net-carbohydrate", "low": 3, "high": 2 }""", ".low", "'3'", "not above the high")]
    [InlineData("""{ "balance": "net-carbohydrate", "high": -1 }""", ".high", "'-1'", "give 0 or more")]
    [InlineData("""{ "balance": "net-carbohydrate", "high": "NaN" }""", ".high", "'NaN'", "give 0 or more")]
    [InlineData("""{ "balance": "net-carbohydrate", "low": "Infinity" }""", ".low", "'Infinity'", "give 0")]
    public Task A_limit_that_nothing_can_keep_is_refused(string limit, string field, string value, string wayOut) =>
        RefusedByEverySolve($$"""{ "limits": [{{limit}}] }""", $"habits.limits[0]{field}", value, wayOut);

    [Fact]
    public Task More_than_twenty_limits_are_refused() => RefusedByEverySolve(
        $$"""{ "limits": [{{string.Join(',', Enumerable.Repeat("""{ "balance": "salt", "high": 1 }""", 21))}}] }""", "habits.limits", "'21'", "at most 20");

    private async Task RefusedByEverySolve(string json, string field, string value, string wayOut)
    {
        var habits = JsonParser.Default.Parse<Habits>(json);
        var vary = Bakes.WithoutTreeNuts(Bakes.Hazelnut);
        vary.Habits = habits;
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(vary))).Names(field, value, wayOut);
        var resize = new ResizeFormulaRequest { Formula = Bakes.Hazelnut, Factor = 2, Habits = habits };
        (await kitchen.Refuses(service => service.Reformulations.ResizeFormulaAsync(resize))).Names(field, value, wayOut);
        var check = Bakes.SodaSwap(Bakes.Hazelnut);
        check.Habits = habits;
        (await kitchen.Refuses(service => service.Balances.CheckSwapAsync(check))).Names(field, value, wayOut);
    }
}
