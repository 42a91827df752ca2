using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

/// <summary>Invented packets of the fictional Larkfield Bakehouse.</summary>
public sealed class AddedIngredientTests
{
    private static AddIngredientRequest Almond() => new()
    {
        IngredientId = "larkfield-almond",
        DisplayName = "Larkfield almond flour",
        Like = "ingredients/almond-flour-blanched",
        Panel = new NutritionPanel
        {
            Basis = NutritionPanel.Types.Basis.Us,
            ServingG = "28",
            EnergyKcal = "170",
            FatG = "15",
            SaturatedFatG = "1",
            CarbohydrateG = "6",
            FibreG = "3",
            SugarsG = "1",
            ProteinG = "6",
            SodiumMg = "0",
        },
        Allergens = new StatedAllergens { Contains = { "nuts" } },
        PricePerKg = 12,
    };

    [Fact]
    public async Task A_bag_is_baked_with_as_any_ingredient_until_it_is_removed()
    {
        await using var service = await RunningService.Start();
        var added = await service.Ingredients.AddIngredientAsync(Almond());

        // 6 g of 28 g, half a gram either way of both.
        var protein = added.Ingredient.Facts.Single(fact => fact.Fact_ == "proteinGPer100G");
        Assert.InRange(protein.Low, 5.5 / 28.5 * 100 - 1e-6, protein.Value);
        Assert.InRange(protein.High, protein.Value, 6.5 / 27.5 * 100 + 1e-6);
        Assert.Equal(["tree-nuts"], added.Ingredient.AllergensUs);
        // Of all that stands on the shelf it alone is this kitchen's own.
        var shelf = await service.Ingredients.ListIngredientsAsync(new ListIngredientsRequest { PageSize = 1000 });
        Assert.Equal(["ingredients/larkfield-almond"], shelf.Ingredients.Where(one => one.Own).Select(one => one.Name));
        Assert.Equal(12, added.Ingredient.Facts.Single(fact => fact.Fact_ == "pricePerKg").Value);
        var balance = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Loaf() });
        Assert.InRange(balance.Nutrition.Per100G.ProteinG, 10, 25);
        Assert.Equal(added.Ingredient, await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-almond" }));

        var removed = await service.Ingredients.DeleteIngredientAsync(new DeleteIngredientRequest { Name = "ingredients/larkfield-almond" });
        Assert.Null(removed.Ingredient);
        var gone = await Assert.ThrowsAsync<RpcException>(async () => await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Loaf() }));
        Assert.Contains("larkfield-almond", gone.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Figures_that_cannot_be_true_together_are_named_each_and_nothing_is_written_down()
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.Panel.EnergyKcal = "900";

        var refusal = await Refusal(service, request);
        Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        Assert.Contains("energy 900 kcal", refusal.Status.Detail, StringComparison.Ordinal);
        var fields = refusal.GetRpcStatus()!.GetDetail<Google.Rpc.BadRequest>().FieldViolations.Select(violation => violation.Field).ToList();
        Assert.Contains("panel.energyKcal", fields);
        Assert.Contains("panel.fatG", fields);
        await Assert.ThrowsAsync<RpcException>(async () => await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-almond" }));
    }

    [Fact]
    public async Task A_part_above_its_whole_is_named()
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.Panel.SaturatedFatG = "20";

        Assert.Contains("saturated fat", (await Refusal(service, request)).Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_food_of_the_kitchen_is_replaced_only_where_that_is_said()
    {
        await using var service = await RunningService.Start();
        await service.Ingredients.AddIngredientAsync(Almond());
        Assert.Equal(StatusCode.AlreadyExists, (await Refusal(service, Almond())).StatusCode);

        var again = Almond();
        again.Replace = true;
        again.Panel.FibreG = "4";
        var replaced = await service.Ingredients.AddIngredientAsync(again);
        Assert.InRange(replaced.Ingredient.Facts.Single(fact => fact.Fact_ == "fibreGPer100G").Value, 3.5 / 28.5 * 100, 4.5 / 27.5 * 100);
    }

    [Fact]
    public async Task A_bag_that_is_only_tried_is_not_written_down()
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.ValidateOnly = true;
        var answer = await service.Ingredients.AddIngredientAsync(request);

        Assert.NotEmpty(answer.Ingredient.Facts);
        await Assert.ThrowsAsync<RpcException>(async () => await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-almond" }));
    }

    [Fact]
    public async Task Allergens_that_the_packet_does_not_state_stay_unknown_and_the_answer_says_so()
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.Like = string.Empty;
        request.Allergens = null;
        var answer = await service.Ingredients.AddIngredientAsync(request);

        Assert.False(answer.Ingredient.AllergensKnown);
        Assert.Contains(answer.Cautions, caution => caution.Contains("never stated", StringComparison.Ordinal));
        Assert.Contains(answer.Ingredient.UnknownFacts, fact => fact == "potassiumMgPer100G");
    }

    [Theory]
    [InlineData("almond-meal", "ingredientId", "my-almond-meal")]
    [InlineData("Almond Meal", "ingredientId", "small letters")]
    [InlineData("", "ingredientId", "small letters")]
    public async Task An_id_that_cannot_be_given_is_refused_with_the_way_out(string id, string field, string wayOut)
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.IngredientId = id;

        var refusal = await Refusal(service, request);
        Assert.Contains(field, refusal.Status.Detail, StringComparison.Ordinal);
        Assert.Contains(wayOut, refusal.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_mistake_of_a_packet_is_named_at_once()
    {
        await using var service = await RunningService.Start();
        var request = Almond();
        request.DisplayName = " ";
        request.Like = "ingredients/almond-flower";
        request.Allergens.Contains.Add("moonlight");
        request.Vegan = true;
        request.Allergens.MayContain.Add("milk");
        request.Allergens.Contains.Add("dairy");
        request.Panel.Basis = NutritionPanel.Types.Basis.Unspecified;
        request.Panel.FatG = "some";
        request.Panel.ServingG = "0";
        request.Role = "flower";

        var fields = (await Refusal(service, request)).GetRpcStatus()!.GetDetail<Google.Rpc.BadRequest>().FieldViolations.Select(violation => violation.Field);
        Assert.Equal(
            ["allergens.contains[1]", "displayName", "like", "panel.basis", "panel.fatG", "panel.servingG", "role", "vegan"],
            fields.Order(StringComparer.Ordinal));
    }

    private static Formula Loaf() => new()
    {
        DisplayName = "Larkfield crackers",
        Lines = { new Line { Ingredient = "ingredients/larkfield-almond", Grams = 200 }, new Line { Ingredient = "ingredients/egg-whole", Grams = 100 } },
        Slices = 10,
    };

    private static async Task<RpcException> Refusal(RunningService service, AddIngredientRequest request) =>
        await Assert.ThrowsAsync<RpcException>(async () => await service.Ingredients.AddIngredientAsync(request));
}
