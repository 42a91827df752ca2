using System.Text.Json;
using Microsoft.OpenApi;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Networking.OpenApi;

/// <summary>The document that a script's author reads, read back by the reader of the same standard's library.</summary>
[Collection(OpenKitchen.Name)]
public sealed class ContractDocumentTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task It_is_an_openapi_document_without_a_fault()
    {
        using var stream = new MemoryStream(await Bytes());
        var read = await OpenApiDocument.LoadAsync(stream, "json");
        Assert.Empty(read.Diagnostic!.Errors);
        Assert.Empty(read.Diagnostic.Warnings);
        Assert.NotEmpty(read.Document!.Paths);
    }

    [Fact]
    public async Task Every_path_of_the_contract_is_in_it_with_its_words()
    {
        var document = JsonDocument.Parse(await Bytes()).RootElement;
        var paths = document.GetProperty("paths");
        foreach (var question in new[] { "balance", "variant", "replace", "check", "resize", "reformulate", "bake", "rise", "card" })
        {
            var post = paths.GetProperty($"/v1/formulas:{question}").GetProperty("post");
            Assert.NotEmpty(post.GetProperty("description").GetString()!);
            Assert.True(post.GetProperty("requestBody").GetProperty("content").TryGetProperty("application/json", out _));
        }

        var one = paths.GetProperty("/v1/ingredients/{ingredient}").GetProperty("get");
        Assert.Equal("ingredient", one.GetProperty("parameters")[0].GetProperty("name").GetString());
        var many = paths.GetProperty("/v1/ingredients").GetProperty("get").GetProperty("parameters").EnumerateArray().Select(parameter => parameter.GetProperty("name").GetString());
        Assert.Contains("pageSize", many);
    }

    [Fact]
    public async Task A_field_has_its_name_its_kind_and_its_unit()
    {
        var schemas = JsonDocument.Parse(await Bytes()).RootElement.GetProperty("components").GetProperty("schemas");
        var formula = schemas.GetProperty("Formula").GetProperty("properties");
        Assert.Equal("array", formula.GetProperty("lines").GetProperty("type").GetString());
        Assert.Equal("#/components/schemas/Line", formula.GetProperty("lines").GetProperty("items").GetProperty("$ref").GetString());
        Assert.Equal("number", formula.GetProperty("bakeLossPercent").GetProperty("type").GetString());
        Assert.Contains("[g]", schemas.GetProperty("Line").GetProperty("properties").GetProperty("grams").GetProperty("description").GetString()!, StringComparison.Ordinal);
    }

    private Task<byte[]> Bytes() => kitchen.Service.Http.GetByteArrayAsync(new Uri("/openapi/v1.json", UriKind.Relative));
}
