using System.Net.Http.Json;
using System.Text.Json;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class ReplaceIngredientTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_dose_without_a_formula_is_answered_by_its_equivalents()
    {
        var response = await kitchen.Service.Substitutions.ReplaceIngredientAsync(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = 6 });
        var citric = response.Answers.Single(answer => answer.Replacement.Doses[0].Ingredient == "ingredients/citric-acid");

        // 6 g / 188.18 g/mol = 31.9 mmol; a third of it of citric acid at 192.12 g/mol.
        Assert.Equal(31.9, citric.Replacement.AcidMmol, 0.05);
        Assert.Equal(2.04, citric.Replacement.Doses[0].ExactGrams, 0.01);
        Assert.Equal(2.0, citric.Replacement.Doses[0].Grams, 0.001);
        Assert.Equal(LeaveningReplacement.Types.Timing.Faster, citric.Replacement.Timing);
        Assert.NotEmpty(citric.Replacement.TimingWords);
        Assert.Equal([("ingredients/cream-of-tartar", 6, 0), ("ingredients/citric-acid", 0, 2)], citric.Changes.Select(change => (change.Ingredient, change.BeforeGrams, change.AfterGrams)));
        Assert.All(response.Answers, answer => Assert.NotEmpty(answer.Cautions));
    }

    [Fact]
    public async Task In_a_formula_a_liquid_acid_takes_its_water_out_and_every_band_is_kept()
    {
        var request = new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/cream-of-tartar", With = { "ingredients/vinegar-distilled" } };
        var answer = Assert.Single((await kitchen.Service.Substitutions.ReplaceIngredientAsync(request)).Answers);

        Assert.All(answer.Readings, reading => Assert.Equal(Reading.Types.Standing.Inside, reading.Standing));
        var water = answer.Changes.Single(change => change.Ingredient == "ingredients/water");
        Assert.Equal(answer.Replacement.WaterMoreGrams, water.BeforeGrams - water.AfterGrams, 0.6);
        Assert.True(answer.Replacement.HasPhCrumb && answer.Replacement.HasPhCrumbBefore);
    }

    [Fact]
    public async Task A_flour_is_replaced_by_solving_again()
    {
        var response = await kitchen.Service.Substitutions.ReplaceIngredientAsync(
            new ReplaceIngredientRequest { Name = "formulas/hazelnut-tin-loaf", Ingredient = "ingredients/hazelnut-flour" });

        Assert.InRange(response.Answers.Count, 1, 3);
        Assert.All(response.Answers, answer => Assert.Null(answer.Replacement));
        Assert.All(response.Answers, answer => Assert.DoesNotContain(answer.Formula.Lines, line => line.Ingredient == "ingredients/hazelnut-flour"));
    }

    [Fact]
    public async Task What_cannot_stand_in_is_an_answer_that_says_no()
    {
        var response = await kitchen.Service.Substitutions.ReplaceIngredientAsync(
            new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/cream-of-tartar", With = { "ingredients/buttermilk" } });

        Assert.Empty(response.Answers);
        Assert.All(response.Conflict, conflict => Assert.NotEmpty(conflict.Words));
        Assert.NotNull(response.Nearest);
    }

    [Fact]
    public async Task Over_http_it_is_the_same_question()
    {
        var body = new { ingredient = "ingredients/baking-soda", grams = 10, with = new[] { "ingredients/potassium-bicarbonate" } };
        var response = await kitchen.Service.Http.PostAsJsonAsync("/v1/formulas:replace", body);
        response.EnsureSuccessStatusCode();
        var answer = (await response.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("answers")[0];

        Assert.Equal(11.9, answer.GetProperty("changes")[1].GetProperty("afterGrams").GetDouble(), 0.05);
    }
}
