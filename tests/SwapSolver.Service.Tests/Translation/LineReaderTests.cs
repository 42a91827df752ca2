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
    [InlineData(""" "text": "1 cup almnd flour" """, "text", "1 cup almnd flour", "almond-flour-blanched")]
    [InlineData(""" "text": "3 c. à soupe" """, "text", "3 c. à soupe", "French")]
    [InlineData(""" "text": "salt to taste" """, "text", "salt to taste", "no amount")]
    [InlineData(""" "text": "5 g salt", "grams": 5 """, "text", "5 g salt", "text alone")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1.5, "unit": "bushel" """, "unit", "bushel", "tbsp")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": -1, "unit": "tsp" """, "amount", "-1", "more than 0")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "unit": "tsp" """, "amount", "0", "more than 0")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1.5 """, "unit", "", "not a unit")]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1, "unit": "tsp", "grams": 5 """, "amount", "1", "one of them")]
    public Task A_measure_that_cannot_be_weighed_is_refused(string line, string field, string value, string wayOut) =>
        Refused(line, field, value, wayOut);

    [Theory]
    // A teaspoon of soda weighs 4.6 g, a large US egg 50 g and its white 33 g (USDA SR 26).
    [InlineData(""" "text": "1 1/2 tsp baking soda" """, "baking-soda", 6.9)]
    [InlineData(""" "ingredient": "ingredients/baking-soda", "amount": 1.5, "unit": "tsp" """, "baking-soda", 6.9)]
    [InlineData(""" "text": "2 large eggs + 1 white" """, "egg-white", 33)]
    [InlineData(""" "text": "2 large eggs + 1 white" """, "egg-whole", 100)]
    public async Task A_household_measure_counts_as_its_grams(string line, string id, double grams)
    {
        var measured = await Bakes.Balance(kitchen.Service, WithAlmonds(line));
        var weighed = await Bakes.Balance(kitchen.Service, WithAlmonds(line.Contains("white", StringComparison.Ordinal)
            ? """ "ingredient": "ingredients/egg-whole", "grams": 100 }, { "ingredient": "ingredients/egg-white", "grams": 33 """
            : FormattableString.Invariant($""" "ingredient": "ingredients/{id}", "grams": {grams} """)));
        Assert.Equal(weighed.Nutrition.PerSlice.MassG, measured.Nutrition.PerSlice.MassG, 1e-9);
        Assert.Equal(weighed.Nutrition.PerSlice.SodiumMg, measured.Nutrition.PerSlice.SodiumMg, 1e-9);
        Assert.Equal(weighed.Nutrition.PerSlice.ProteinG, measured.Nutrition.PerSlice.ProteinG, 1e-9);
    }

    [Fact]
    public async Task Eggs_whites_and_yolks_of_no_size_are_weighed_in_every_system()
    {
        foreach (var system in Enum.GetValues<V1.Line.Types.System>())
        {
            foreach (var egg in new[] { "egg-whole", "egg-white", "egg-yolk" })
            {
                var loaf = WithAlmonds($""" "ingredient": "ingredients/{egg}", "count": 3 """);
                loaf.System = system;
                var response = await Bakes.Balance(kitchen.Service, loaf);
                Assert.True(response.LinesRead.Single() is { Grams: > 30 and < 200 }, $"{system} {response.LinesRead}");
            }
        }
    }

    [Fact]
    public Task Four_large_eggs_of_220_grams_are_refused() =>
        // A large US egg is 50 g without its shell (data/ingredients/egg-whole.json), so four are 200 g.
        Refused(""" "ingredient": "ingredients/egg-whole", "count": 4, "size": "LARGE_US", "grams": 220 """, "grams", "220", "200 g");

    private async Task Refused(string line, string field, string value, string wayOut)
    {
        var refusal = await kitchen.Refuses(service => Bakes.Balance(service, WithAlmonds(line)));
        refusal.Names($"formula.lines[1].{field}", value, wayOut);
    }

    private static V1.Formula WithAlmonds(string line) =>
        Bakes.From($$"""{ "lines": [{ "ingredient": "ingredients/almond-meal", "grams": 200 }, { {{line}} }], "slices": 12 }""");
}
