using System.Text.Json.Nodes;
using Google.Protobuf.Reflection;
using Microsoft.OpenApi;

namespace SwapSolver.Service.Networking.OpenApi;

/// <summary>Messages as JSON schemas, by the JSON mapping of proto3.</summary>
/// <param name="document">The document that the schemas go to.</param>
/// <param name="comments">The words.</param>
internal sealed class MessageSchemas(OpenApiDocument document, ContractComments comments)
{
    private const string WellKnown = "google.protobuf.";

    /// <summary>A reference to a message's schema, which is added where it is not there yet.</summary>
    public IOpenApiSchema Of(MessageDescriptor message)
    {
        if (WellKnownSchema(message.FullName) is { } known)
        {
            return known;
        }

        var name = NameOf(message.FullName);
        var schemas = document.Components!.Schemas!;
        if (!schemas.ContainsKey(name))
        {
            var schema = new OpenApiSchema { Type = JsonSchemaType.Object, Description = comments.Of(message.FullName), Properties = new Dictionary<string, IOpenApiSchema>() };
            // First its name: a message may hold itself.
            schemas[name] = schema;
            foreach (var field in message.Fields.InDeclarationOrder())
            {
                schema.Properties[field.JsonName] = Of(field);
            }
        }

        return new OpenApiSchemaReference(name, document);
    }

    /// <summary>The schema of a field.</summary>
    public IOpenApiSchema Of(FieldDescriptor field)
    {
        if (field.IsMap)
        {
            return new OpenApiSchema
            {
                Type = JsonSchemaType.Object,
                Description = Words(field),
                AdditionalProperties = One(field.MessageType.FindFieldByNumber(2), string.Empty),
            };
        }

        return field.IsRepeated
            ? new OpenApiSchema { Type = JsonSchemaType.Array, Description = Words(field), Items = One(field, string.Empty) }
            : One(field, Words(field));
    }

    private static string NameOf(string fullName) => fullName[(fullName.IndexOf(".v1.", StringComparison.Ordinal) + ".v1.".Length)..];

    private string Words(FieldDescriptor field)
    {
        var words = comments.Of(field.FullName);
        return field.RealContainingOneof is { } one
            ? $"{words} Give one of {string.Join(", ", one.Fields.Select(other => other.JsonName))}."
            : words;
    }

    private IOpenApiSchema One(FieldDescriptor field, string words) => field.FieldType switch
    {
        FieldType.Message => Of(field.MessageType) switch
        {
            OpenApiSchemaReference reference => new OpenApiSchemaReference(reference.Reference.Id!, document) { Description = words },
            OpenApiSchema schema => Described(schema, words),
            var other => other,
        },
        FieldType.Enum => new OpenApiSchema
        {
            Type = JsonSchemaType.String,
            Description = words,
            Enum = [.. field.EnumType.Values.Select(value => (JsonNode)value.Name)],
        },
        FieldType.Bool => new OpenApiSchema { Type = JsonSchemaType.Boolean, Description = words },
        FieldType.Double or FieldType.Float => new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double", Description = words },
        FieldType.Int32 or FieldType.SInt32 or FieldType.UInt32 => new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int32", Description = words },
        FieldType.Bytes => new OpenApiSchema { Type = JsonSchemaType.String, Format = "byte", Description = words },
        _ => new OpenApiSchema { Type = JsonSchemaType.String, Description = words },
    };

    private static OpenApiSchema Described(OpenApiSchema schema, string words)
    {
        schema.Description = words;
        return schema;
    }

    private static OpenApiSchema? WellKnownSchema(string fullName) => fullName switch
    {
        WellKnown + "Timestamp" => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time" },
        WellKnown + "FieldMask" => new OpenApiSchema { Type = JsonSchemaType.String, Format = "field-mask" },
        WellKnown + "Duration" => new OpenApiSchema { Type = JsonSchemaType.String, Format = "duration" },
        WellKnown + "Empty" => new OpenApiSchema { Type = JsonSchemaType.Object },
        _ => null,
    };
}
