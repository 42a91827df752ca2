using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class IngredientServiceTests(StrictKitchen kitchen)
{
    [Fact]
    public async Task Every_figure_of_every_ingredient_has_a_range_a_unit_a_source_and_a_mark()
    {
        foreach (var listed in await All())
        {
            var ingredient = await kitchen.Service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = listed.Name });
            Assert.NotEmpty(ingredient.Facts);
            Assert.All(ingredient.Facts, fact =>
            {
                Assert.True(fact.Low <= fact.Value && fact.Value <= fact.High, $"{ingredient.Name} {fact}");
                Assert.False(string.IsNullOrWhiteSpace(fact.Unit), $"{ingredient.Name} {fact}");
                Assert.False(string.IsNullOrWhiteSpace(fact.Source), $"{ingredient.Name} {fact}");
                Assert.False(string.IsNullOrWhiteSpace(fact.Mark), $"{ingredient.Name} {fact}");
            });
            Assert.False(string.IsNullOrWhiteSpace(ingredient.Usage.Source), ingredient.Name);
        }
    }

    [Fact]
    public async Task Small_pages_list_what_one_large_page_lists()
    {
        var whole = await All();
        var paged = new List<Ingredient>();
        var request = new ListIngredientsRequest { PageSize = 7 };
        do
        {
            var page = await kitchen.Service.Ingredients.ListIngredientsAsync(request);
            Assert.InRange(page.Ingredients.Count, 1, 7);
            paged.AddRange(page.Ingredients);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        Assert.Equal(whole, paged);
        Assert.Equal(whole.Select(ingredient => ingredient.Name).Order(StringComparer.Ordinal), whole.Select(ingredient => ingredient.Name));
    }

    [Fact]
    public async Task A_role_lists_only_what_does_that_work()
    {
        var flours = (await kitchen.Service.Ingredients.ListIngredientsAsync(new ListIngredientsRequest { Role = "flour", PageSize = 1000 })).Ingredients;
        Assert.All(flours, ingredient => Assert.Equal("flour", ingredient.Role));
        Assert.Contains(flours, ingredient => ingredient.Name == "ingredients/hazelnut-flour");
        Assert.DoesNotContain(flours, ingredient => ingredient.Name == "ingredients/water");
    }

    [Fact]
    public async Task An_ingredient_without_a_name_is_refused() =>
        (await kitchen.Refuses(service => service.Ingredients.GetIngredientAsync(new GetIngredientRequest()))).Names("name", "missing", "ingredients/almond-meal");

    [Fact]
    public async Task An_ingredient_that_is_not_there_brings_the_nearest_names()
    {
        var refusal = await kitchen.Refuses(service => service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/almond-mael" }));
        Assert.Equal(StatusCode.NotFound, refusal.Code);
        Assert.Contains("almond-meal", refusal.Info.Metadata["nearest"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, "", "", "pageSize", "'-1'", "give 0 to 1000")]
    [InlineData(10, "abc", "", "pageToken", "'abc'", "nextPageToken")]
    [InlineData(10, "-5", "", "pageToken", "'-5'", "nextPageToken")]
    [InlineData(10, "99999999999", "", "pageToken", "'99999999999'", "nextPageToken")]
    [InlineData(10, ":", "", "pageToken", "':'", "nextPageToken")]
    [InlineData(10, "flour:almond-meal", "fat", "pageToken", "'flour:almond-meal'", "same role")]
    [InlineData(10, "", "flower", "role", "'flower'", "flour")]
    public async Task A_page_that_no_list_has_is_refused(int size, string token, string role, string field, string value, string wayOut)
    {
        var request = new ListIngredientsRequest { PageSize = size, PageToken = token, Role = role };
        (await kitchen.Refuses(service => service.Ingredients.ListIngredientsAsync(request))).Names(field, value, wayOut);
    }

    private async Task<IReadOnlyList<Ingredient>> All() =>
        (await kitchen.Service.Ingredients.ListIngredientsAsync(new ListIngredientsRequest { PageSize = 1000 })).Ingredients;
}
