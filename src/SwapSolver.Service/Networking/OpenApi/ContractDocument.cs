using System.Text.RegularExpressions;
using Google.Api;
using Google.Protobuf.Reflection;
using Microsoft.OpenApi;
using ServiceDescriptor = Google.Protobuf.Reflection.ServiceDescriptor;

namespace SwapSolver.Service.Networking.OpenApi;

/// <summary>The HTTP/JSON side of the contract as an OpenAPI document, written from the descriptors and the comments of the protos:
/// there is no second description that could differ from the first.</summary>
internal sealed partial class ContractDocument
{
    private const string Json = "application/json";

    private readonly ContractComments comments = new();

    private readonly OpenApiDocument document = new()
    {
        Info = new OpenApiInfo
        {
            Title = "SwapSolver",
            Version = "v1",
            Description = "Substitutions and reformulations of low-carb, gluten-free formulas. A question that cannot be read is answered with google.rpc details.",
        },
        Paths = [],
        Components = new OpenApiComponents { Schemas = new Dictionary<string, IOpenApiSchema>() },
    };

    private readonly MessageSchemas schemas;

    private ContractDocument() => schemas = new MessageSchemas(document, comments);

    /// <summary>The document as JSON.</summary>
    /// <param name="services">The services it describes.</param>
    public static async Task<byte[]> Write(IEnumerable<ServiceDescriptor> services)
    {
        var contract = new ContractDocument();
        foreach (var method in services.SelectMany(service => service.Methods))
        {
            contract.Add(method);
        }

        using var stream = new MemoryStream();
        await contract.document.SerializeAsJsonAsync(stream, OpenApiSpecVersion.OpenApi3_1);
        return stream.ToArray();
    }

    private void Add(MethodDescriptor method)
    {
        if (method.GetOptions()?.GetExtension(AnnotationsExtensions.Http) is not { } rule)
        {
            return;
        }

        foreach (var binding in rule.AdditionalBindings.Prepend(rule))
        {
            var (verb, path) = binding.PatternCase switch
            {
                HttpRule.PatternOneofCase.Get => (HttpMethod.Get, binding.Get),
                HttpRule.PatternOneofCase.Post => (HttpMethod.Post, binding.Post),
                HttpRule.PatternOneofCase.Patch => (HttpMethod.Patch, binding.Patch),
                HttpRule.PatternOneofCase.Put => (HttpMethod.Put, binding.Put),
                HttpRule.PatternOneofCase.Delete => (HttpMethod.Delete, binding.Delete),
                _ => throw new InvalidOperationException($"{method.FullName} has no path"),
            };
            // {name=ingredients/*} is a path with one part open: /v1/ingredients/{ingredient}.
            var named = Variable().Matches(path).Select(match => match.Groups["field"].Value).ToList();
            var open = Variable().Replace(path, match => match.Groups["shape"].Success ? Opened(match.Groups["shape"].Value) : match.Value);
            if (!document.Paths.TryGetValue(open, out var item))
            {
                item = new OpenApiPathItem { Operations = [] };
                document.Paths[open] = item;
            }

            item.Operations!.Add(verb, Operation(method, binding, open, named));
        }
    }

    private OpenApiOperation Operation(MethodDescriptor method, HttpRule rule, string path, List<string> named)
    {
        var streams = method.IsServerStreaming ? " The answer is an array, a piece after another." : string.Empty;
        var operation = new OpenApiOperation
        {
            OperationId = method.Name,
            Tags = new HashSet<OpenApiTagReference> { new(method.Service.Name, document) },
            Description = comments.Of(method.FullName) + streams,
            Parameters = [.. Opening().Matches(path).Select(match => (IOpenApiParameter)new OpenApiParameter
            {
                Name = match.Groups[1].Value,
                In = ParameterLocation.Path,
                Required = true,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            })],
            Responses = new OpenApiResponses
            {
                ["200"] = new OpenApiResponse { Description = "The answer.", Content = Content(method.IsServerStreaming ? Many(method.OutputType) : schemas.Of(method.OutputType)) },
                ["default"] = new OpenApiResponse { Description = "google.rpc.Status: the code, a message and the details." },
            },
        };
        document.Tags ??= new HashSet<OpenApiTag>();
        document.Tags.Add(new OpenApiTag { Name = method.Service.Name, Description = comments.Of(method.Service.FullName) });
        if (rule.Body is { Length: > 0 } body)
        {
            var sent = body == "*" ? schemas.Of(method.InputType) : schemas.Of(method.InputType.FindFieldByName(body).MessageType);
            operation.RequestBody = new OpenApiRequestBody { Required = true, Content = Content(sent) };
        }

        if (rule.Body != "*")
        {
            foreach (var field in method.InputType.Fields.InDeclarationOrder().Where(field => !named.Contains(field.Name) && field.Name != rule.Body && (field.FieldType != FieldType.Message || field.MessageType.FullName.StartsWith("google.protobuf.", StringComparison.Ordinal))))
            {
                operation.Parameters.Add(new OpenApiParameter
                {
                    Name = field.JsonName,
                    In = ParameterLocation.Query,
                    Description = comments.Of(field.FullName),
                    Schema = schemas.Of(field),
                });
            }
        }

        return operation;
    }

    private OpenApiSchema Many(MessageDescriptor message) => new() { Type = JsonSchemaType.Array, Items = schemas.Of(message) };

    private static Dictionary<string, IOpenApiMediaType> Content(IOpenApiSchema schema) => new() { [Json] = new OpenApiMediaType { Schema = schema } };

    /// <summary><c>formulas/*/revisions/*</c> becomes <c>formulas/{formula}/revisions/{revision}</c>.</summary>
    private static string Opened(string shape)
    {
        var parts = shape.Split('/');
        return string.Join('/', parts.Select((part, index) => part == "*" ? $"{{{parts[index - 1].TrimEnd('s')}}}" : part));
    }

    [GeneratedRegex(@"\{(?<field>[\w.]+)(=(?<shape>[^}]+))?\}")]
    private static partial Regex Variable();

    [GeneratedRegex(@"\{([\w.]+)\}")]
    private static partial Regex Opening();
}
