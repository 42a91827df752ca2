using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

/// <summary>Cautions must stand in the answer where the danger is.</summary>
[Collection(OpenKitchen.Name)]
public sealed class CautionTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_loaf_made_without_an_allergen_is_never_called_free_from_it()
    {
        var response = await Bakes.Vary(kitchen.Service, Bakes.Hazelnut);
        Assert.All(response.Answers, answer => Says(answer.Cautions, "Made without tree nuts", "no free-from claim", "local law"));
    }

    [Fact]
    public async Task A_loaf_that_nearly_does_without_an_allergen_carries_the_same_caution()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "egg" }, Habits = new Habits { NewIngredients = 0 } };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(request);
        Says(response.Nearest.Cautions, "Made without egg", "no free-from claim");
    }

    [Theory]
    [InlineData("hazelnut-tin-loaf")]
    [InlineData("seeded-free-form-loaf")]
    [InlineData("almond-rolls")]
    [InlineData("vanilla-muffins")]
    [InlineData("cocoa-cake")]
    public async Task Every_loaf_with_egg_says_how_hot_its_core_must_become(string id)
    {
        var response = await Bakes.Balance(kitchen.Service, Bakes.Stored(id));
        // 160 °F = 71 °C for egg dishes: US federal food safety guidance on safe minimum internal temperatures; from memory.
        Says(response.Cautions, "Contains egg", "71 °C");
        Says(response.Cautions, "Net carbs", "not medical advice");
        Says(response.Cautions, "estimates", "brands differ");
        Says(response.Cautions, "Contains by the US or EU list", "egg");
    }

    [Fact]
    public async Task A_loaf_without_egg_says_nothing_of_egg()
    {
        var flat = Bakes.From("""{ "lines": [{ "ingredient": "ingredients/rice-flour-white", "grams": 200 }, { "ingredient": "ingredients/water", "grams": 200 }], "slices": 4 }""");
        var response = await Bakes.Balance(kitchen.Service, flat);
        Assert.DoesNotContain(response.Cautions, caution => caution.Contains("egg", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(response.Cautions, caution => caution.Contains("Contains by", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_swap_that_brings_in_an_allergen_says_so_and_first_of_all()
    {
        var request = new CheckSwapRequest
        {
            Formula = Bakes.Seeded,
            Swaps = { new Swap { From = "ingredients/sunflower-seed-flour", To = "ingredients/almond-meal" } },
        };
        var response = await kitchen.Service.Balances.CheckSwapAsync(request);
        Assert.StartsWith("This brings in tree nuts", response.Cautions[0], StringComparison.Ordinal);
        Says(response.Cautions, "Contains by the US or EU list", "tree nuts");
    }

    [Fact]
    public async Task A_variant_whose_stand_in_is_an_allergen_says_so()
    {
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Seeded, Without = { "egg" } });
        foreach (var answer in response.Answers)
        {
            var before = (await Bakes.Balance(kitchen.Service, Bakes.Seeded)).Allergens;
            var brought = answer.Allergens.Us.Concat(answer.Allergens.Eu).Select(source => source.Allergen)
                .Except(before.Us.Concat(before.Eu).Select(source => source.Allergen));
            Assert.Equal(brought.Any(), answer.Cautions.Any(caution => caution.StartsWith("This brings in", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public async Task Xylitol_is_shown_with_its_danger_to_dogs()
    {
        var loaf = Bakes.Hazelnut;
        loaf.Lines.Add(new Line { Ingredient = "ingredients/xylitol", Grams = 20 });
        Says((await Bakes.Balance(kitchen.Service, loaf)).Cautions, "xylitol", "dog");
    }

    [Fact]
    public async Task Psyllium_is_shown_with_the_advice_to_drink() =>
        Says((await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Cautions, "psyllium", "liquid");

    [Fact]
    public async Task Every_allergen_names_the_ingredient_that_brings_it()
    {
        var allergens = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Allergens;
        // The loaf has hazelnut flour, egg and butter: tree nuts, egg and milk on both lists (US list of nine; EU Annex II).
        var expected = new[] { ("egg", "ingredients/egg-whole"), ("milk", "ingredients/butter"), ("tree-nuts", "ingredients/hazelnut-flour") };
        Assert.Equal(expected, allergens.Us.Select(source => (source.Allergen, Assert.Single(source.Ingredients))));
        Assert.Equal(expected, allergens.Eu.Select(source => (source.Allergen, Assert.Single(source.Ingredients))));
        Assert.Contains("law", allergens.Caution, StringComparison.Ordinal);
    }

    /// <summary>One of the cautions says all of these words.</summary>
    private static void Says(IEnumerable<string> cautions, params string[] words)
    {
        var all = cautions.ToList();
        Assert.True(
            all.Exists(caution => words.All(word => caution.Contains(word, StringComparison.OrdinalIgnoreCase))),
            $"no caution says all of '{string.Join("', '", words)}' in:{Environment.NewLine}{string.Join(Environment.NewLine, all)}");
    }
}
