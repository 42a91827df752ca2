using Grpc.Core;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Records;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Ingredients;
using StatedAllergens = SwapSolver.Kitchen.Foods.StatedAllergens;

namespace SwapSolver.Service.Tests.Services;

/// <summary>The service of a kitchen that put a table of foods in.</summary>
public sealed class ManyFoodsTests
{
    private const int Foods = 2_500;

    private static async Task<RunningService> Kitchen(Action<KitchenRecords>? more = null)
    {
        var service = await RunningService.Start();
        var records = new KitchenRecords(service.Records);
        records.Put(ManyFoods.OfTable(Foods));
        more?.Invoke(records);
        return service;
    }

    /// <summary>Sunflower seed by all its figures, of which nobody said what it is like.</summary>
    private static StatedFood Seed(StatedAllergens? allergens, params ReadOnlySpan<Domain.Fact> unknown) => new()
    {
        Id = "seed-of-a-table",
        Name = "Seed of a table",
        Origin = FoodOrigin.Table,
        UsdaFoodNumber = "12999",
        Allergens = allergens,
        Suits = new Domain.Suits(Vegan: true, Vegetarian: true, GlutenFree: true),
        Figures = TestKitchen.Ingredient("sunflower-seed-flour").Figures.RemoveRange(unknown.ToArray()),
    };

    private static StatedFood Named(string id) => new() { Id = id, Name = id, Origin = FoodOrigin.Table, Figures = ManyFoods.OfTable(1)[0].Figures };

    private static Formula Walnut()
    {
        var formula = new Formula { DisplayName = "Walnut loaf", Slices = Loaf.Walnut.Slices };
        formula.Lines.AddRange(Loaf.Walnut.Lines.Select(line => new Line { Ingredient = $"ingredients/{line.Ingredient.Id}", Grams = line.Grams.Value }));
        return formula;
    }

    private static VaryFormulaRequest SeedWanted()
    {
        var request = new VaryFormulaRequest { Formula = Walnut(), Habits = new Habits() };
        request.Without.AddRange(["tree-nuts", "sunflower-seed-flour"]);
        request.Habits.Allow.Add("ingredients/seed-of-a-table");
        return request;
    }

    [Fact]
    public async Task Pages_list_every_food_once_though_foods_come_and_go_between_them()
    {
        await using var service = await Kitchen();
        var records = new KitchenRecords(service.Records);
        var listed = new List<string>();
        var request = new ListIngredientsRequest { PageSize = 1000 };
        do
        {
            var page = await service.Ingredients.ListIngredientsAsync(request);
            listed.AddRange(page.Ingredients.Select(one => one.Name));
            request.PageToken = page.NextPageToken;
            records.Forget(listed[^1]["ingredients/".Length..]);
            records.Put([Named($"aaa-{listed.Count}")]);
        }
        while (request.PageToken.Length > 0);

        Assert.Equal(Foods + TestKitchen.Bakehouse.Pantry.Ids.Length, listed.Distinct().Count());
        Assert.Equal(listed.Order(StringComparer.Ordinal), listed);
    }

    [Fact]
    public async Task A_food_of_a_table_is_used_where_it_is_allowed_and_its_allergens_are_stated()
    {
        await using var service = await Kitchen(records => records.Put([Seed(new StatedAllergens([], []))]));
        var best = (await service.Substitutions.VaryFormulaAsync(SeedWanted())).Answers[0];

        Assert.Contains(best.Formula.Lines, line => line.Ingredient == "ingredients/seed-of-a-table" && line.Grams > 0);
        Assert.Empty(best.Allergens.NotStated);
    }

    [Fact]
    public async Task A_food_whose_allergens_nobody_stated_stays_out_of_a_loaf_without_an_allergen_and_the_answer_says_so()
    {
        await using var service = await Kitchen(records => records.Put([Seed(null)]));
        var answer = await service.Substitutions.VaryFormulaAsync(SeedWanted());

        Assert.All(answer.Answers, one => Assert.DoesNotContain(one.Formula.Lines, line => line.Ingredient == "ingredients/seed-of-a-table"));
        Assert.All(answer.Answers, one => Assert.Contains(one.Notes, note => note.Contains("Seed of a table", StringComparison.Ordinal) && note.Contains("never stated", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task What_was_never_stated_is_told_where_a_swap_brings_it_in()
    {
        await using var service = await Kitchen(records => records.Put([Seed(null)]));
        var request = new CheckSwapRequest { Formula = Walnut() };
        request.Swaps.Add(new Swap { From = "ingredients/walnut-meal", To = "ingredients/seed-of-a-table" });
        var check = await service.Balances.CheckSwapAsync(request);
        Assert.Contains(check.Cautions, caution => caution.Contains("brings in Seed of a table", StringComparison.Ordinal) && caution.Contains("ask the eater", StringComparison.Ordinal));

        var bread = Walnut();
        bread.Lines.Add(new Line { Ingredient = "ingredients/seed-of-a-table", Grams = 20 });
        var balance = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = bread });
        Assert.Equal("ingredients/seed-of-a-table", Assert.Single(balance.Allergens.NotStated));
    }

    [Fact]
    public async Task A_slip_of_the_pen_finds_its_name_among_thousands()
    {
        await using var service = await Kitchen();
        var request = new VaryFormulaRequest { Formula = Walnut() };
        request.Without.Add("tree-nust");
        request.Habits = new Habits { Allow = { "ingredients/many-0001" } };
        var refusal = await Assert.ThrowsAsync<RpcException>(async () => await service.Substitutions.VaryFormulaAsync(request));

        Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        var violations = refusal.GetRpcStatus()!.GetDetail<Google.Rpc.BadRequest>().FieldViolations;
        Assert.Contains(violations, one => one.Field == "without[0]" && one.Description.Contains("tree-nuts", StringComparison.Ordinal));
        Assert.Contains(violations, one => one.Field == "habits.allow[0]" && one.Description.Contains("many-0001", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_ingredient_whose_facts_are_not_known_is_refused_as_what_comes_in()
    {
        // The table prints no sodium for it, and salt is read of every loaf.
        await using var service = await Kitchen(records => records.Put([Seed(new StatedAllergens([], []), Domain.Fact.Sodium)]));
        var request = new CheckSwapRequest { Formula = Walnut() };
        request.Swaps.Add(new Swap { From = "ingredients/walnut-meal", To = "ingredients/seed-of-a-table" });
        var refusal = await Assert.ThrowsAsync<RpcException>(async () => await service.Balances.CheckSwapAsync(request));

        Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        Assert.Contains("sodium", refusal.Status.Detail, StringComparison.Ordinal);
    }
}
