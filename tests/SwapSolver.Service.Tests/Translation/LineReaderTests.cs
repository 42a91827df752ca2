using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Translation;

[Collection(StrictKitchen.Name)]
public sealed class LineReaderTests(StrictKitchen kitchen)
{
    [Theory]
    [InlineData(""" "ingredient": "ingredients/water", "count": 3 """, "count", "cannot count water", "give 'grams'")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": 0 """, "count", "'0'", "more than 0")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": -2 """, "count", "'-2'", "more than 0")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": 1001 """, "count", "'1001'", "at most 1000")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": "NaN" """, "count", "'NaN'", "at most 1000")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": 4, "size": 99 """, "size", "99", "LARGE_US")]
    public Task Eggs_that_no_carton_holds_are_refused(string line, string field, string value, string wayOut) =>
        Refused(line, field, value, wayOut);

    [Theory]
    [InlineData(""" "text": "1 1/2 tsp baking soda" """, "text", "1 1/2 tsp baking soda")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1.5, "unit": "tsp" """, "unit", "tsp")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1.5 """, "unit", "")]
    public Task A_household_measure_is_refused_with_the_advice_to_weigh(string line, string field, string value) =>
        Refused(line, field, value, "weigh it");

    [Fact]
    public Task Four_large_eggs_of_220_grams_are_refused() =>
        // A large US egg is 50 g without its shell (data/ingredients/egg-whole.json), so four are 200 g.
        Refused(""" "ingredient": "ingredients/egg-whole", "count": 4, "size": "LARGE_US", "grams": 220 """, "grams", "220", "200 g");

    private async Task Refused(string line, string field, string value, string wayOut)
    {
        var formula = Bakes.From($$"""{ "lines": [{ "ingredient": "ingredients/almond-meal", "grams": 200 }, { {{line}} }], "slices": 12 }""");
        var refusal = await kitchen.Refuses(service => Bakes.Balance(service, formula));
        refusal.Names($"formula.lines[1].{field}", value, wayOut);
    }
}
