using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Format = SwapSolver.V1.ImportIngredientsRequest.Types.Format;

namespace SwapSolver.Service.Tests.Services;

public sealed class ImportedIngredientTests
{
    private const string Header = "id,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,contains";

    /// <summary>An invented seed; its energy by the general factors of Regulation (EU) No 1169/2011, Annex XIV, fibre among them (20 g protein, 45 g fat, 17 g carbohydrate, 10 g fibre: 573 kcal).</summary>
    private const string Seed = "larkfield-seed,Larkfield seed,5,573,20,45,3,27,10,none";

    [Fact]
    public async Task Rows_that_cannot_be_true_are_reported_by_line_and_the_rest_go_in()
    {
        await using var service = await RunningService.Start();
        var answer = await Import(service, Header, Seed, "bad-seed,Bad seed,50,573,20,45,3,27,10,none", "almond-meal,Almonds,5,573,20,45,3,27,10,none");

        Assert.Equal((Format.Csv, 1, 2), (answer.Format, answer.Added, answer.LeftOut));
        Assert.Equal([3, 4], answer.Problems.Select(problem => problem.Line));
        Assert.Contains("add up to 145 g", answer.Problems[0].Reason, StringComparison.Ordinal);
        Assert.Contains("my-almond-meal", answer.Problems[1].WayOut, StringComparison.Ordinal);
        var seed = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-seed" });
        Assert.Equal(573, seed.Facts.Single(fact => fact.Fact_ == "energyKcalPer100G").Value);
        Assert.True(seed.AllergensKnown);
    }

    [Fact]
    public async Task A_row_that_stood_in_an_earlier_piece_is_reported_and_changes_nothing()
    {
        await using var service = await RunningService.Start();
        var first = await Import(service, Header, Seed);
        var request = new ImportIngredientsRequest { Header = Header, FirstLine = 3, Text = Seed.Replace(",45,3,27", ",44,4,27", StringComparison.Ordinal).Replace("573", "570", StringComparison.Ordinal) };
        request.EarlierRows.AddRange(first.Rows);
        var second = await service.Ingredients.ImportIngredientsAsync(request);

        Assert.Equal(["larkfield-seed"], first.Rows);
        Assert.Equal((0, 0, 1), (second.Added, second.Changed, second.LeftOut));
        Assert.Equal((3, "larkfield-seed"), (Assert.Single(second.Problems).Line, second.Problems[0].Value));
        var seed = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-seed" });
        Assert.Equal(45, seed.Facts.Single(fact => fact.Fact_ == "fatGPer100G").Value);
    }

    [Fact]
    public async Task What_goes_out_because_nobody_stated_its_allergens_says_so()
    {
        await using var service = await RunningService.Start();
        await Import(
            service,
            "id,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,sugars_g,sodium_mg,saturated_fat_g",
            "larkfield-seed,Larkfield seed,5,573,20,45,3,27,10,2,10,5");
        var formula = new Formula
        {
            DisplayName = "Larkfield seed loaf",
            Slices = 10,
            Lines =
            {
                new Line { Ingredient = "ingredients/larkfield-seed", Grams = 40 },
                new Line { Ingredient = "ingredients/hazelnut-flour", Grams = 160 },
                new Line { Ingredient = "ingredients/psyllium-husk-powder", Grams = 15 },
                new Line { Ingredient = "ingredients/egg-whole", Grams = 200 },
                new Line { Ingredient = "ingredients/water", Grams = 180 },
            },
        };
        var response = await service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = formula, Without = { "tree-nuts" } });
        string Reason(string id) => (response.Answers.Count > 0 ? response.Answers[0] : response.Nearest).Changes.Single(change => change.Ingredient == $"ingredients/{id}").Reason;

        Assert.Contains("nobody stated", Reason("larkfield-seed"), StringComparison.Ordinal);
        Assert.DoesNotContain("nobody stated", Reason("hazelnut-flour"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_table_again_changes_nothing_and_another_figure_is_a_change()
    {
        await using var service = await RunningService.Start();
        await Import(service, Header, Seed);
        var again = await Import(service, Header, Seed);
        var other = await Import(service, Header, Seed.Replace(",45,3,27", ",44,4,27", StringComparison.Ordinal).Replace("573", "570", StringComparison.Ordinal));

        Assert.Equal((0, 0, 1), (again.Added, again.Changed, again.Same));
        Assert.Equal((0, 1, 0), (other.Added, other.Changed, other.Same));
    }

    [Fact]
    public async Task A_table_that_is_only_tried_says_what_it_would_do_and_writes_nothing_down()
    {
        await using var service = await RunningService.Start();
        var request = new ImportIngredientsRequest { Text = $"{Header}\n{Seed}", ValidateOnly = true };
        Assert.Equal(1, (await service.Ingredients.ImportIngredientsAsync(request)).Added);
        Assert.Equal(1, (await service.Ingredients.ImportIngredientsAsync(request)).Added);
        await Import(service, Header, Seed);
        Assert.Equal(1, (await service.Ingredients.ImportIngredientsAsync(request)).Same);
    }

    [Fact]
    public async Task A_table_does_not_overwrite_the_packet_on_the_shelf()
    {
        await using var service = await RunningService.Start();
        await service.Ingredients.AddIngredientAsync(new AddIngredientRequest
        {
            IngredientId = "larkfield-seed",
            DisplayName = "Larkfield seed",
            Panel = new NutritionPanel { Basis = NutritionPanel.Types.Basis.Eu, ServingG = "100", FatG = "45", CarbohydrateG = "17", FibreG = "10", ProteinG = "20" },
        });

        Assert.Contains("packet", Assert.Single((await Import(service, Header, Seed)).Problems).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cup_of_an_imported_food_is_weighed_by_its_own_row()
    {
        await using var service = await RunningService.Start();
        await Import(service, Header, Seed);
        var weights = await Import(service, "id,amount,measure,grams", "larkfield-seed,1,cup,132", "nobody,1,cup,100");
        Assert.Equal((Format.HouseholdWeights, 1, 1), (weights.Format, weights.Added, weights.LeftOut));
        Assert.Equal("nobody", Assert.Single(weights.Problems).Value);
        Assert.Equal(1, (await Import(service, "id,amount,measure,grams", "larkfield-seed,1,cup,132")).Same);

        var balance = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest
        {
            Formula = new Formula { DisplayName = "Larkfield crackers", Slices = 1, Lines = { new Line { Ingredient = "ingredients/larkfield-seed", Amount = 2, Unit = "cup" } } },
        });
        Assert.Equal(264, balance.Nutrition.PerLoaf.MassG, 6);
    }

    [Fact]
    public async Task A_weight_by_food_number_goes_to_the_shipped_ingredient_of_that_number()
    {
        await using var service = await RunningService.Start();
        // Invented weight for food 12061, which the shipped almond meal is of.
        Assert.True((await Import(service, "ndb_no,amount,measure,grams", "12061,1,larkfield scoop,61")).Added > 0);

        var almond = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/almond-meal" });
        Assert.Equal("12061", almond.UsdaFoodNumber);
        Assert.Equal(61, almond.HouseholdMeasures.Single(measure => measure.Measure == "larkfield scoop").Grams);
    }

    [Fact]
    public async Task A_table_that_states_no_allergens_leaves_them_unknown_and_says_so()
    {
        await using var service = await RunningService.Start();
        var answer = await Import(service, Header, Seed.Replace(",none", ",", StringComparison.Ordinal));

        Assert.Contains("allergens", Assert.Single(answer.Cautions), StringComparison.Ordinal);
        Assert.False((await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/larkfield-seed" })).AllergensKnown);
    }

    [Fact]
    public async Task Later_pieces_are_read_under_the_header_of_the_first()
    {
        await using var service = await RunningService.Start();
        var answer = await service.Ingredients.ImportIngredientsAsync(
            new ImportIngredientsRequest { Format = Format.Csv, Header = Header, FirstLine = 901, Text = $"{Seed}\nbad,Bad,1,1,1,1,1,1,1,none" });

        Assert.Equal((1, 902), (answer.Added, Assert.Single(answer.Problems, problem => problem.Field == "water_g").Line));
    }

    [Fact]
    public async Task A_piece_that_is_none_is_refused_by_its_field()
    {
        await using var service = await RunningService.Start();
        var refusal = await Assert.ThrowsAsync<RpcException>(async () =>
            await service.Ingredients.ImportIngredientsAsync(new ImportIngredientsRequest { FirstLine = -1 }));

        Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        Assert.Equal(
            ["firstLine", "text"],
            refusal.GetRpcStatus()!.GetDetail<Google.Rpc.BadRequest>().FieldViolations.Select(violation => violation.Field).Order(StringComparer.Ordinal));
    }

    private static async Task<ImportIngredientsResponse> Import(RunningService service, params string[] lines) =>
        await service.Ingredients.ImportIngredientsAsync(new ImportIngredientsRequest { Text = string.Join('\n', lines) });
}
