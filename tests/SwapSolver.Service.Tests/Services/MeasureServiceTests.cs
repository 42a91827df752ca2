using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class MeasureServiceTests(StrictKitchen kitchen)
{
    [Fact]
    public async Task Lines_come_back_in_their_order_with_grams_and_range()
    {
        var lines = await Convert("1 1/2 cups (150 g) finely ground almonds", "1 cup coconut flour");
        Assert.Equal(["ingredients/almond-meal", "ingredients/coconut-flour"], lines.Select(line => line.Ingredient));
        Assert.Equal((149, 150, 151), (lines[0].LowGrams, lines[0].Grams, lines[0].HighGrams));
        // 112 g by our estimate, 15 % either way.
        Assert.Equal((95.2, 112, 128.8), (lines[1].LowGrams, lines[1].Grams, lines[1].HighGrams));
        Assert.All(lines, line => Assert.Empty(line.Problem));
    }

    [Fact]
    public async Task A_plus_gives_one_result_an_ingredient_with_the_same_text()
    {
        var lines = await Convert("2 large eggs + 1 white, room temp");
        Assert.Equal(["ingredients/egg-whole", "ingredients/egg-white"], lines.Select(line => line.Ingredient));
        Assert.All(lines, line => Assert.Equal("2 large eggs + 1 white, room temp", line.Text));
        Assert.Equal([100, 33], lines.Select(line => line.Grams));
    }

    [Fact]
    public async Task What_is_not_sure_has_candidates_and_no_grams()
    {
        var line = Assert.Single(await Convert("1 cup almnd flour"));
        Assert.Empty(line.Ingredient);
        Assert.False(line.HasGrams);
        Assert.NotEmpty(line.Problem);
        Assert.Equal("ingredients/almond-flour-blanched", line.Candidates[0].Ingredient);
        Assert.All(line.Candidates, candidate => Assert.InRange(candidate.Score, 0.3, 0.99));
    }

    [Fact]
    public async Task The_tablespoon_is_that_of_the_system()
    {
        var request = new ConvertLinesRequest { Lines = { "1 tbsp water" }, System = Line.Types.System.Australian };
        // 20 mL of water by its litre of 1000 g.
        Assert.Equal(20, Assert.Single((await kitchen.Service.Measures.ConvertLinesAsync(request)).Lines).Grams);
    }

    [Fact]
    public async Task No_lines_too_many_lines_and_an_unknown_system_are_refused()
    {
        (await kitchen.Refuses(service => service.Measures.ConvertLinesAsync(new ConvertLinesRequest()))).Names("lines", "'0'", "give 1 to 500");
        var many = new ConvertLinesRequest { Lines = { Enumerable.Repeat("1 egg", 501) } };
        (await kitchen.Refuses(service => service.Measures.ConvertLinesAsync(many))).Names("lines", "'501'", "give 1 to 500");
        var other = new ConvertLinesRequest { Lines = { "1 egg" }, System = (Line.Types.System)99 };
        (await kitchen.Refuses(service => service.Measures.ConvertLinesAsync(other))).Names("system", "99", "METRIC");
    }

    [Fact]
    public async Task The_same_answer_comes_over_http()
    {
        using var response = await kitchen.Service.Http.PostAsJsonAsync("/v1/lines:convert", new { lines = new[] { "1/2 tsp baking soda" } });
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        var line = json.RootElement.GetProperty("lines")[0];
        Assert.Equal("ingredients/baking-soda", line.GetProperty("ingredient").GetString());
        Assert.Equal(2.3, line.GetProperty("grams").GetDouble());
    }

    private async Task<IReadOnlyList<ConvertedLine>> Convert(params string[] lines) =>
        (await kitchen.Service.Measures.ConvertLinesAsync(new ConvertLinesRequest { Lines = { lines } })).Lines;
}
