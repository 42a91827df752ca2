using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class ReformulateTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_word_and_a_figure_are_met_together_and_told_before_and_after()
    {
        var response = await Ask(new Target { Name = "less-salt" }, new Target { Name = "protein", Low = 4 });
        Assert.NotEmpty(response.Answers);
        Assert.Equal(["protein", "salt"], response.Before.Select(reading => reading.Balance).Order());
        var before = response.Before.Single(reading => reading.Balance == "salt");
        Assert.Equal(0.75 * before.Value, before.Band.High, 12);
        Assert.Equal(Reading.Types.Standing.Above, before.Standing);
        Assert.All(response.Answers, answer =>
        {
            Assert.InRange(answer.Readings.Single(reading => reading.Balance == "salt").Value, 0, before.Band.High * (1 + 1e-6));
            Assert.True(answer.Readings.Single(reading => reading.Balance == "protein").Value >= 4);
            Assert.Contains(answer.Notes, note => note.Contains("less salt", StringComparison.Ordinal));
        });
    }

    [Fact]
    public async Task A_formula_that_is_there_already_is_said_to_be()
    {
        var answer = Assert.Single((await Ask(new Target { Name = "protein", Low = 1 })).Answers);
        Assert.Empty(answer.Changes);
    }

    [Fact]
    public async Task What_is_out_of_reach_is_an_answer_with_the_wishes_that_fight()
    {
        var response = await Ask(new Target { Name = "energy", High = 20 });
        Assert.Empty(response.Answers);
        Assert.Contains(response.Conflict, conflict => conflict.Wish == "energy");
    }

    [Fact]
    public async Task A_price_is_told_once_every_line_has_one()
    {
        await using var service = await RunningService.Start();
        var request = new ReformulateFormulaRequest { Formula = Bakes.Hazelnut, Targets = { new Target { Name = "cheaper" } } };
        var refusal = await Refusal.Of(() => service.Reformulations.ReformulateFormulaAsync(request));
        refusal.Names("targets[0].name", "hazelnut-flour", "pantry measure");
        foreach (var line in Bakes.Hazelnut.Lines)
        {
            // Invented prices: the nuts cost most, water nothing.
            var price = line.Ingredient switch { "ingredients/hazelnut-flour" => 18, "ingredients/water" => 0, _ => 5 };
            await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = line.Ingredient, PricePerKg = price });
        }

        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = "ingredients/sunflower-seed-flour", PricePerKg = 4 });
        var response = await service.Reformulations.ReformulateFormulaAsync(request);
        var before = response.Before.Single();
        // 180 g at 18 a kilogram is 3.24; water is free; all else is 5 a kilogram: (775 - 180 - 260) g are 1.675.
        Assert.Equal(3.24 + 1.675, before.Value, 9);
        Assert.All(response.Answers, answer => Assert.True(answer.Readings.Single(reading => reading.Balance == "price").Value <= 0.9 * before.Value * (1 + 1e-6)));
        Assert.NotEmpty(response.Answers);
    }

    private async Task<ReformulateFormulaResponse> Ask(params Target[] targets) =>
        await kitchen.Service.Reformulations.ReformulateFormulaAsync(new ReformulateFormulaRequest { Formula = Bakes.Hazelnut, Targets = { targets } });
}
