using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class SubstitutionServiceTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_hazelnut_loaf_without_tree_nuts_has_none_and_keeps_every_band()
    {
        var response = await Bakes.Vary(kitchen.Service, Bakes.Hazelnut);
        Assert.InRange(response.Answers.Count, 1, 3);
        Assert.Empty(response.Conflict);
        Assert.Null(response.Nearest);
        foreach (var answer in response.Answers)
        {
            Assert.All(answer.Readings, reading => Assert.Equal(Reading.Types.Standing.Inside, reading.Standing));
            Assert.All(answer.Readings, ReadingKeepsItsBand);
            Assert.DoesNotContain(answer.Allergens.Us.Concat(answer.Allergens.Eu), source => source.Allergen == "tree-nuts");
            foreach (var line in answer.Formula.Lines)
            {
                var ingredient = await kitchen.Service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = line.Ingredient });
                Assert.DoesNotContain("tree-nuts", ingredient.AllergensUs.Concat(ingredient.AllergensEu));
            }
        }
    }

    [Fact]
    public async Task Changes_are_the_difference_between_the_two_bowls()
    {
        var reference = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Formula;
        var response = await Bakes.Vary(kitchen.Service, Bakes.Hazelnut);
        foreach (var answer in response.Answers)
        {
            var before = GramsByIngredient(reference);
            var after = GramsByIngredient(answer.Formula);
            var expected = before.Keys.Union(after.Keys)
                .Select(name => (name, before.GetValueOrDefault(name), after.GetValueOrDefault(name)))
                .Where(line => line.Item2 != line.Item3)
                .Order();
            Assert.Equal(expected, answer.Changes.Select(change => (change.Ingredient, change.BeforeGrams, change.AfterGrams)).Order());
            Assert.All(answer.Changes, change => Assert.NotEmpty(change.Reason));
        }
    }

    [Fact]
    public async Task Alternatives_differ_in_what_comes_in()
    {
        var response = await Bakes.Vary(kitchen.Service, Bakes.Hazelnut);
        var bowls = response.Answers.Select(answer => string.Join(' ', answer.Formula.Lines.Select(line => line.Ingredient).Order(StringComparer.Ordinal))).ToList();
        Assert.Equal(bowls.Count, bowls.Distinct().Count());
    }

    [Fact]
    public async Task A_stored_formula_answers_as_its_own_text_does()
    {
        var inline = await Bakes.Vary(kitchen.Service, Bakes.Hazelnut);
        var stored = await kitchen.Service.Substitutions.VaryFormulaAsync(
            new VaryFormulaRequest { Name = "formulas/hazelnut-tin-loaf", Without = { "tree-nuts" } });
        Assert.Equal(inline, stored);
    }

    [Theory]
    [InlineData("nuts")]
    [InlineData("Tree-Nuts")]
    [InlineData(" tree-nuts ")]
    public async Task The_same_wish_in_a_bakers_words_leaves_the_hazelnuts_out(string wish)
    {
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { wish } });
        Assert.DoesNotContain(response.Answers[0].Formula.Lines, line => line.Ingredient == "ingredients/hazelnut-flour");
    }

    [Fact]
    public async Task A_loaf_that_already_meets_the_wish_stays_as_it_is()
    {
        var response = await Bakes.Vary(kitchen.Service, Bakes.Seeded);
        var answer = Assert.Single(response.Answers);
        Assert.Empty(answer.Changes);
    }

    [Fact]
    public async Task An_egg_loaf_without_egg_and_with_nothing_new_is_an_answer_that_says_no()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "egg" }, Habits = new Habits { NewIngredients = 0 } };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(request);
        Assert.Empty(response.Answers);
        Assert.Contains(response.Conflict, conflict => conflict.Wish == "without:egg");
        Assert.All(response.Conflict, conflict => Assert.NotEmpty(conflict.Words));
        Assert.NotNull(response.Nearest);
        Assert.DoesNotContain(response.Nearest.Formula.Lines, line => line.Ingredient == "ingredients/egg-whole");
        // The nearest gives way on what costs least: a new ingredient, not a band of the crumb.
        Assert.Contains(response.Nearest.Changes, change => change.BeforeGrams == 0);
        Assert.All(response.Nearest.Readings, reading => Assert.Equal(Reading.Types.Standing.Inside, reading.Standing));
    }

    [Fact]
    public async Task A_cap_that_no_loaf_keeps_has_a_nearest_formula_that_misses_it()
    {
        var habits = new Habits { Limits = { new ReadingLimit { Balance = "net-carbohydrate", High = 0.05 } } };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Habits = habits });
        Assert.Empty(response.Answers);
        Assert.Contains(response.Nearest.Readings, reading => reading is { Balance: "net-carbohydrate", Standing: Reading.Types.Standing.Above });
    }

    [Fact]
    public async Task Two_limits_that_no_loaf_can_keep_together_are_named_as_what_fights()
    {
        var habits = new Habits
        {
            Limits = { new ReadingLimit { Balance = "salt", High = 0.005 }, new ReadingLimit { Balance = "salt", Low = 0.02 } },
        };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Habits = habits });
        Assert.Empty(response.Answers);
        Assert.Contains(response.Conflict, conflict => conflict.Wish == "salt");
    }

    [Fact]
    public async Task No_more_of_a_flour_goes_in_than_the_kitchen_has_of_it()
    {
        const string Flax = "ingredients/flaxseed-ground";
        var has = Bakes.Hazelnut.Lines.Single(line => line.Ingredient == Flax).Grams * 0.8;
        var habits = new Habits { Limits = { new ReadingLimit { Balance = Flax, High = has } } };
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "ingredients/butter" }, Habits = habits });
        Assert.NotEmpty(response.Answers);
        Assert.All(response.Answers, answer => Assert.InRange(answer.Formula.Lines.Where(line => line.Ingredient == Flax).Sum(line => line.Grams), 0, has));
    }

    [Theory]
    [InlineData("hazelnut-tin-loaf")]
    [InlineData("seeded-free-form-loaf")]
    [InlineData("almond-rolls")]
    [InlineData("vanilla-muffins")]
    [InlineData("cocoa-cake")]
    public async Task Every_demo_formula_gives_either_a_loaf_without_egg_or_the_reason_why_not(string id)
    {
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Name = $"formulas/{id}", Without = { "egg" } });
        Assert.NotEqual(response.Answers.Count > 0, response.Conflict.Count > 0);
        Assert.All(response.Answers, answer => Assert.DoesNotContain(answer.Allergens.Us, source => source.Allergen == "egg"));
    }

    [Fact]
    public async Task The_same_question_gets_the_same_answer_to_the_byte_and_is_solved_once()
    {
        var first = await Bakes.Vary(kitchen.Service, Bakes.Rolls);
        var solves = kitchen.Solver.Solves;
        var second = await Bakes.Vary(kitchen.Service, Bakes.Rolls);
        Assert.Equal(first.ToByteArray(), second.ToByteArray());
        Assert.Equal(solves, kitchen.Solver.Solves);
    }

    [Fact]
    public async Task Another_kitchen_gives_the_same_answer_to_the_byte()
    {
        await using var other = await RunningService.Start();
        var here = await Bakes.Vary(kitchen.Service, Bakes.Rolls);
        var there = await Bakes.Vary(other, Bakes.Rolls);
        Assert.Equal(here.ToByteArray(), there.ToByteArray());
    }

    private static Dictionary<string, double> GramsByIngredient(Formula formula) =>
        formula.Lines.GroupBy(line => line.Ingredient).ToDictionary(group => group.Key, group => group.Sum(line => line.Grams));

    private static void ReadingKeepsItsBand(Reading reading)
    {
        Assert.True(reading.Low <= reading.Value && reading.Value <= reading.High, $"{reading.Balance}: {reading.Low} <= {reading.Value} <= {reading.High}");
        if (reading.Band is { } band)
        {
            Assert.True(!band.HasLow || reading.Value >= band.Low, reading.ToString());
            Assert.True(!band.HasHigh || reading.Value <= band.High, reading.ToString());
        }
    }
}
