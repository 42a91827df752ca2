using System.Text.Json;

namespace SwapSolver.Data.Files;

/// <summary>A JSON value that knows where it stands. The platform's own trees forget the place, and a bad figure must
/// be shown with file, line and column.</summary>
public sealed class JsonPlace
{
    private readonly SourceText source;
    private readonly long offset;
    private readonly JsonTokenType kind;
    private readonly object? value;

    private JsonPlace(SourceText source, long offset, JsonTokenType kind, object? value)
    {
        this.source = source;
        this.offset = offset;
        this.kind = kind;
        this.value = value;
    }

    /// <summary>Reads a file.</summary>
    /// <exception cref="DataFaultException">It is not JSON.</exception>
    public static JsonPlace Read(SourceText source)
    {
        var reader = new Utf8JsonReader(source.Bytes.Span, new JsonReaderOptions { MaxDepth = 32 });
        try
        {
            reader.Read();
            var root = ReadValue(source, ref reader);
            if (reader.Read())
            {
                throw source.Fault(reader.TokenStartIndex, "something stands after the end of the JSON");
            }

            return root;
        }
        catch (JsonException fault)
        {
            throw source.Fault(reader.BytesConsumed, $"this is not JSON: {fault.Message}");
        }
        catch (InvalidOperationException fault)
        {
            // The reader's word for text that is not Unicode.
            throw source.Fault(reader.TokenStartIndex, $"this text cannot be read: {fault.Message}");
        }
    }

    /// <summary>The fault that this value is.</summary>
    /// <param name="reason">What is wrong, and the way out.</param>
    public DataFaultException Fault(string reason) => source.Fault(offset, reason);

    /// <summary>The value of a property that must be there.</summary>
    public JsonPlace Get(string name) => Find(name) ?? throw Fault($"'{name}' is missing here");

    /// <summary>The value of a property, or null where it is absent or null.</summary>
    public JsonPlace? Find(string name) =>
        Properties.TryGetValue(name, out var found) && found.kind != JsonTokenType.Null ? found : null;

    /// <summary>Refuses properties beyond those named: a mistyped key must not pass for an absent one.</summary>
    public JsonPlace Only(params ReadOnlySpan<string> names)
    {
        foreach (var (name, place) in Properties)
        {
            if (!names.Contains(name))
            {
                throw place.Fault($"'{name}' is not known here; known are {string.Join(", ", names!)}");
            }
        }

        return this;
    }

    /// <summary>The properties in the order of the file.</summary>
    public IReadOnlyDictionary<string, JsonPlace> Properties =>
        value as Dictionary<string, JsonPlace> ?? throw Fault("an object { } is needed here");

    /// <summary>The items of an array.</summary>
    public IReadOnlyList<JsonPlace> Items =>
        value as List<JsonPlace> ?? throw Fault("a list [ ] is needed here");

    /// <summary>A text that is not empty.</summary>
    public string Text =>
        kind == JsonTokenType.String && value is string { Length: > 0 } text ? text : throw Fault("a text is needed here");

    /// <summary>Whether a text stands here.</summary>
    public bool IsText => kind == JsonTokenType.String;

    /// <summary>A finite number.</summary>
    public double Number =>
        kind == JsonTokenType.Number && value is double number && double.IsFinite(number)
            ? number
            : throw Fault("a number is needed here");

    /// <summary>True or false.</summary>
    public bool Flag => kind switch
    {
        JsonTokenType.True => true,
        JsonTokenType.False => false,
        _ => throw Fault("true or false is needed here"),
    };

    private static JsonPlace ReadValue(SourceText source, ref Utf8JsonReader reader)
    {
        var offset = reader.TokenStartIndex;
        var kind = reader.TokenType;
        object? value = kind switch
        {
            JsonTokenType.StartObject => ReadObject(source, ref reader),
            JsonTokenType.StartArray => ReadArray(source, ref reader),
            JsonTokenType.String => reader.GetString(),
            JsonTokenType.Number => reader.GetDouble(),
            _ => null,
        };
        return new JsonPlace(source, offset, kind, value);
    }

    private static Dictionary<string, JsonPlace> ReadObject(SourceText source, ref Utf8JsonReader reader)
    {
        var properties = new Dictionary<string, JsonPlace>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var offset = reader.TokenStartIndex;
            var name = reader.GetString()!;
            reader.Read();
            if (!properties.TryAdd(name, ReadValue(source, ref reader)))
            {
                throw source.Fault(offset, $"'{name}' stands twice");
            }
        }

        return properties;
    }

    private static List<JsonPlace> ReadArray(SourceText source, ref Utf8JsonReader reader)
    {
        var items = new List<JsonPlace>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(ReadValue(source, ref reader));
        }

        return items;
    }
}
