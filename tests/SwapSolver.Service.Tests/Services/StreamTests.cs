using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Google.Protobuf;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class StreamTests(OpenKitchen kitchen)
{
    private static readonly JsonFormatter Formatter = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true));

    private static TraceFrontierRequest NetCarbsAgainstProtein => new()
    {
        Formula = Bakes.Hazelnut,
        Trades = { new Trade { Reading = "fewer-net-carbs" }, new Trade { Reading = "protein" } },
        MostPoints = 4,
    };

    [Fact]
    public async Task A_trade_off_comes_point_by_point_the_two_ends_first()
    {
        using var call = kitchen.Service.Reformulations.TraceFrontier(NetCarbsAgainstProtein);
        var points = await call.ResponseStream.ReadAllAsync().ToListAsync();
        Assert.InRange(points.Count, 2, 4);
        Assert.Equal(Enumerable.Range(1, points.Count), points.Select(point => point.Point));
        Assert.Equal(points.Min(point => point.First.Value), points[0].First.Value);
        Assert.Equal(points.Max(point => point.Second.Value), points[1].Second.Value);
        Assert.All(points, point =>
        {
            Assert.Equal(("net-carbohydrate", "protein", 4), (point.First.Balance, point.Second.Balance, point.MostPoints));
            Assert.NotEmpty(point.Answer.Formula.Lines);
            Assert.NotEmpty(point.Answer.Cautions);
        });
    }

    [Fact]
    public async Task A_chart_comes_pair_by_pair()
    {
        using var call = kitchen.Service.Substitutions.ChartSwaps(new ChartSwapsRequest { Formula = Bakes.Hazelnut, Ingredients = { "ingredients/butter", "water" } });
        var pairs = await call.ResponseStream.ReadAllAsync().ToListAsync();
        Assert.Equal(pairs[0].Pairs, pairs.Count);
        Assert.Equal(["ingredients/water", "ingredients/butter"], pairs.Select(pair => pair.Ingredient).Distinct());
        Assert.All(pairs, pair => Assert.NotEqual(CheckSwapResponse.Types.Verdict.Unspecified, pair.Verdict));
        Assert.All(pairs.Where(pair => pair.Verdict == CheckSwapResponse.Types.Verdict.DoesNotBalance), pair => Assert.False(pair.HasDoseGrams));
        Assert.Equal(2, pairs.Count(pair => pair.Replacement.Length == 0));
    }

    [Fact]
    public async Task Over_http_each_line_is_one_pair_and_says_the_same_as_over_grpc()
    {
        using var call = kitchen.Service.Substitutions.ChartSwaps(new ChartSwapsRequest { Formula = Bakes.Hazelnut, Ingredients = { "butter" } });
        var pairs = await call.ResponseStream.ReadAllAsync().ToListAsync();
        var (code, body) = await Post("/v1/formulas:chart", $$"""{ "formula": {{Formatter.Format(Bakes.Hazelnut)}}, "ingredients": ["butter"] }""");
        Assert.Equal(HttpStatusCode.OK, code);
        var lines = body.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(pairs.Count, lines.Length);
        Assert.All(pairs.Zip(lines), pair => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Formatter.Format(pair.First)), JsonNode.Parse(pair.Second)), pair.Second));
    }

    [Fact]
    public async Task Over_http_a_trade_off_and_a_reformulation_are_there_too()
    {
        var (code, body) = await Post(
            "/v1/formulas:frontier", """{ "name": "formulas/almond-rolls", "trades": [{ "reading": "salt" }, { "reading": "protein", "better": "HIGHER" }], "mostPoints": 2 }""");
        Assert.True(code == HttpStatusCode.OK, body);
        Assert.All(body.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.Equal("salt", JsonDocument.Parse(line).RootElement.GetProperty("first").GetProperty("balance").GetString()));
        (code, body) = await Post("/v1/formulas:reformulate", """{ "name": "formulas/almond-rolls", "targets": [{ "name": "moister" }] }""");
        Assert.True(code == HttpStatusCode.OK, body);
        Assert.True(JsonDocument.Parse(body).RootElement.GetProperty("before").GetArrayLength() > 0);
    }

    [Fact]
    public async Task Who_goes_away_ends_the_search()
    {
        using var gone = new CancellationTokenSource();
        using var call = kitchen.Service.Reformulations.TraceFrontier(NetCarbsAgainstProtein, cancellationToken: gone.Token);
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));
        await gone.CancelAsync();
        var fault = await Assert.ThrowsAsync<RpcException>(async () =>
        {
            while (await call.ResponseStream.MoveNext(CancellationToken.None))
            {
                // What was under way may still come.
            }
        });
        Assert.Equal(StatusCode.Cancelled, fault.StatusCode);
        // The room is free again: the next question is answered.
        Assert.NotEmpty((await Bakes.Vary(kitchen.Service, Bakes.Hazelnut)).Answers);
    }

    private async Task<(HttpStatusCode Code, string Body)> Post(string path, string json)
    {
        using var content = new StringContent(json, Encoding.UTF8, "application/json");
        using var response = await kitchen.Service.Http.PostAsync(new Uri(path, UriKind.Relative), content);
        return (response.StatusCode, await response.Content.ReadAsStringAsync());
    }
}
