using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Google.Protobuf;
using Grpc.Health.V1;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests;

[Collection(OpenKitchen.Name)]
public sealed class ServiceHostTests(OpenKitchen kitchen)
{
    private static readonly JsonFormatter Formatter = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true));

    private static string Hazelnut => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "formulas", "hazelnut-tin-loaf.json"));

    [Fact]
    public async Task The_kitchen_says_that_it_is_open()
    {
        var health = await kitchen.Service.Health.CheckAsync(new HealthCheckRequest());
        Assert.Equal(HealthCheckResponse.Types.ServingStatus.Serving, health.Status);
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    public async Task The_kitchen_says_so_to_a_browser_too(string path) =>
        Assert.Equal(HttpStatusCode.OK, (await kitchen.Service.Http.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);

    [Fact]
    public async Task Balance_says_the_same_over_http_and_over_grpc() =>
        Same(Formatter.Format(await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)), await Posted("/v1/formulas:balance", $$"""{ "formula": {{Hazelnut}} }"""));

    [Fact]
    public async Task Variant_says_the_same_over_http_and_over_grpc() =>
        Same(Formatter.Format(await Bakes.Vary(kitchen.Service, Bakes.Hazelnut)), await Posted("/v1/formulas:variant", $$"""{ "formula": {{Hazelnut}}, "without": ["tree-nuts"] }"""));

    [Fact]
    public async Task Check_says_the_same_over_http_and_over_grpc() => Same(
        Formatter.Format(await Bakes.Check(kitchen.Service, Bakes.Hazelnut)),
        await Posted("/v1/formulas:check", $$"""{ "formula": {{Hazelnut}}, "swaps": [{ "from": "ingredients/baking-soda", "to": "ingredients/potassium-bicarbonate" }] }"""));

    [Fact]
    public async Task Resize_says_the_same_over_http_and_over_grpc() =>
        Same(Formatter.Format(await Bakes.Resize(kitchen.Service, Bakes.Hazelnut)), await Posted("/v1/formulas:resize", $$"""{ "formula": {{Hazelnut}}, "factor": 1.5 }"""));

    [Fact]
    public async Task The_pantry_says_the_same_over_http_and_over_grpc()
    {
        var one = await kitchen.Service.Ingredients.GetIngredientAsync(new V1.GetIngredientRequest { Name = "ingredients/butter" });
        Same(Formatter.Format(one), await kitchen.Service.Http.GetStringAsync(new Uri("/v1/ingredients/butter", UriKind.Relative)));
        var page = await kitchen.Service.Ingredients.ListIngredientsAsync(new V1.ListIngredientsRequest { PageSize = 5, Role = "flour" });
        Same(Formatter.Format(page), await kitchen.Service.Http.GetStringAsync(new Uri("/v1/ingredients?pageSize=5&role=flour", UriKind.Relative)));
    }

    [Fact]
    public async Task A_bad_formula_over_http_is_the_callers_mistake_and_names_it()
    {
        const string Formula = """{ "lines": [{ "ingredient": "ingredients/almond-meal", "grams": -5 }], "slices": 12 }""";
        foreach (var question in new[] { "balance", "variant", "check", "resize", "reformulate", "frontier", "chart" })
        {
            var (code, body) = await Post($"/v1/formulas:{question}", $$"""{ "formula": {{Formula}} }""");
            Assert.Equal(HttpStatusCode.BadRequest, code);
            var error = JsonDocument.Parse(body).RootElement;
            Assert.Equal(3, error.GetProperty("code").GetInt32());
            var details = error.GetProperty("details").EnumerateArray().ToDictionary(detail => detail.GetProperty("@type").GetString()!);
            var violations = details["type.googleapis.com/google.rpc.BadRequest"].GetProperty("fieldViolations").EnumerateArray();
            var violation = violations.First(one => one.GetProperty("field").GetString() == "formula.lines[0].grams");
            Assert.Contains("-5", violation.GetProperty("description").GetString()!, StringComparison.Ordinal);
            Assert.Equal("swapsolver", details["type.googleapis.com/google.rpc.ErrorInfo"].GetProperty("domain").GetString());
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("not json")]
    [InlineData("[]")]
    [InlineData("""{ "formula": 5 }""")]
    [InlineData("""{ "formula": { "lines": "many" } }""")]
    [InlineData("""{ "formula": { "lines": [{ "ingredient": "ingredients/water", "grams": "a cup" }], "slices": 4 } }""")]
    [InlineData("""{ "formula": { "lines": [{ "ingredient": "ingredients/water", "gramms": 5 }], "slices": 4 } }""")]
    public async Task What_is_no_formula_over_http_is_the_callers_mistake(string body)
    {
        var (code, answer) = await Post("/v1/formulas:balance", body);
        Assert.Equal(HttpStatusCode.BadRequest, code);
        Assert.Equal(3, JsonDocument.Parse(answer).RootElement.GetProperty("code").GetInt32());
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_in_the_pantry_is_not_found_over_http()
    {
        using var response = await kitchen.Service.Http.GetAsync(new Uri("/v1/ingredients/buttr", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Contains("butter", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bowl_beyond_a_mebibyte_is_turned_away()
    {
        using var content = new StringContent($$"""{ "formula": {{Hazelnut}}, "name": "{{new string('q', 2 << 20)}}" }""", Encoding.UTF8, "application/json");
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/v1/formulas:balance", UriKind.Relative)) { Content = content };
        // Asks first: whoever is still sending when the door closes may see no answer.
        request.Headers.ExpectContinue = true;
        using var response = await kitchen.Service.Http.SendAsync(request);
        Assert.InRange((int)response.StatusCode, 400, 499);
        Assert.DoesNotContain("   at ", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static void Same(string expected, string actual) =>
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), JsonNode.Parse(actual)), $"expected {expected}{Environment.NewLine}but found {actual}");

    private async Task<string> Posted(string path, string json)
    {
        var (code, body) = await Post(path, json);
        Assert.True(code == HttpStatusCode.OK, body);
        return body;
    }

    private async Task<(HttpStatusCode Code, string Body)> Post(string path, string json)
    {
        using var content = new StringContent(json, Encoding.UTF8, "application/json");
        using var response = await kitchen.Service.Http.PostAsync(new Uri(path, UriKind.Relative), content);
        return (response.StatusCode, await response.Content.ReadAsStringAsync());
    }
}
