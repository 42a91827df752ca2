using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Standing = SwapSolver.V1.GoalProgress.Types.Standing;

namespace SwapSolver.Service.Tests.Services;

public sealed class DiffRevisionsTests
{
    private const string Name = "formulas/mine";

    private static async Task<DiffRevisionsResponse> Changed(RunningService service, Action<Formula> change, params string[] goals)
    {
        var formula = await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = "formulas/hazelnut-tin-loaf", FormulaId = "mine" });
        change(formula);
        await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = formula, Goals = { goals }, Note = "changed" });
        return await service.Formulas.DiffRevisionsAsync(new DiffRevisionsRequest { To = Name });
    }

    private static Line Of(Formula formula, string id) => formula.Lines.Single(line => line.Ingredient == $"ingredients/{id}");

    [Fact]
    public async Task Lines_that_changed_came_or_went_are_told_and_no_other()
    {
        await using var service = await RunningService.Start();
        var diff = await Changed(service, formula =>
        {
            Of(formula, "water").Grams = 280;
            formula.Lines.Remove(Of(formula, "butter"));
            formula.Lines.Add(new Line { Ingredient = "ingredients/olive-oil", Grams = 25 });
        });

        Assert.Equal(
            [("ingredients/water", 260, 280), ("ingredients/olive-oil", null, 25), ("ingredients/butter", 30, null)],
            diff.Lines.Select(line => (line.Ingredient, line.HasBeforeGrams ? line.BeforeGrams : (double?)null, line.HasAfterGrams ? line.AfterGrams : (double?)null)));
    }

    [Fact]
    public async Task Readings_and_nutrition_are_those_that_each_formula_has_by_itself()
    {
        await using var service = await RunningService.Start();
        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = "ingredients/water", PricePerKg = 1 });
        var diff = await Changed(service, formula => Of(formula, "water").Grams = 280);
        foreach (var (name, value) in new[] { ($"{Name}/revisions/1", (Func<ReadingDifference, double>)(one => one.Before)), ($"{Name}/revisions/2", one => one.After) })
        {
            var alone = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = name });
            Assert.All(alone.Readings, reading => Assert.Equal(reading.Value, value(diff.Readings.Single(one => one.Balance == reading.Balance)), 9));
        }

        Assert.Equal((await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name })).Nutrition, diff.NutritionAfter);
        // Not every price is known: what the loaf costs is not guessed.
        Assert.DoesNotContain(diff.Readings, reading => reading.Balance == "price");
    }

    [Fact]
    public async Task The_cost_is_told_where_every_price_is_known()
    {
        await using var service = await RunningService.Start();
        foreach (var line in Bakes.Hazelnut.Lines)
        {
            await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = line.Ingredient, PricePerKg = 10 });
        }

        var price = (await Changed(service, formula => Of(formula, "water").Grams = 280)).Readings.Single(reading => reading.Balance == "price");
        // 20 g more at 10 a kilogram.
        Assert.Equal(0.2, price.After - price.Before, 9);
    }

    [Fact]
    public async Task A_goal_is_told_reached_nearer_unmoved_or_farther()
    {
        await using var service = await RunningService.Start();
        var diff = await Changed(
            service,
            formula =>
            {
                formula.Slices = 16;
                Of(formula, "salt").Grams = 5.5;
                Of(formula, "water").Grams = 250;
            },
            "slices=+2", "less-salt", "moister", "energy=..100", "setting-protein=0..", "crustier");

        Assert.Equal(
            [Standing.Reached, Standing.Nearer, Standing.Farther, Standing.Nearer, Standing.Reached, Standing.NotRead], diff.Goals.Select(goal => goal.Standing));
        Assert.Contains("14 to 16, wanted 16", diff.Goals[0].Words[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_formula_is_held_against_another_and_the_first_revision_has_none_before_it()
    {
        await using var service = await RunningService.Start();
        await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = "formulas/hazelnut-tin-loaf", FormulaId = "mine" });
        Assert.Empty((await service.Formulas.DiffRevisionsAsync(new DiffRevisionsRequest { From = "formulas/hazelnut-tin-loaf", To = Name })).Lines);
        (await Refusal.Of(() => service.Formulas.DiffRevisionsAsync(new DiffRevisionsRequest { To = Name }))).Names("from", "", "name the first too");
        (await Refusal.Of(() => service.Formulas.DiffRevisionsAsync(new DiffRevisionsRequest()))).Names("to", "", "formulas/my-loaf");
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Formulas.DiffRevisionsAsync(new DiffRevisionsRequest { To = $"{Name}/revisions/7" }))).Code);
    }
}
