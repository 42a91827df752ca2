using System.Text.Json;
using Google.Protobuf.Reflection;

namespace SwapSolver.Console.Files;

/// <summary>Walks JSON beside the description of a message, and names by path all that does not fit.</summary>
internal sealed class MessageCheck
{
    private readonly List<string> problems = [];

    /// <summary>What does not fit, a line each, in the order of the text.</summary>
    public IReadOnlyList<string> Problems => problems;

    /// <summary>Checks one object against one message.</summary>
    public void Message(JsonElement element, MessageDescriptor message, string path)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Refuse(path, element, $"an object of {FieldNames.List(message)}");
            return;
        }

        var seen = new HashSet<FieldDescriptor>();
        var chosen = new Dictionary<OneofDescriptor, FieldDescriptor>();
        foreach (var property in element.EnumerateObject())
        {
            var place = path.Length == 0 ? property.Name : $"{path}.{property.Name}";
            var field = FieldNames.Find(message, property.Name);
            if (field is null)
            {
                problems.Add($"{place}: no such field.{FieldNames.Suggest(message, property.Name)}");
            }
            else if (!seen.Add(field))
            {
                problems.Add($"{place}: given twice.");
            }
            else if (property.Value.ValueKind != JsonValueKind.Null)
            {
                OneOf(field, chosen, place);
                Field(property.Value, field, place);
            }
        }
    }

    private void OneOf(FieldDescriptor field, Dictionary<OneofDescriptor, FieldDescriptor> chosen, string place)
    {
        if (field.RealContainingOneof is { } choice && !chosen.TryAdd(choice, field))
        {
            problems.Add($"{place}: cannot stand beside {chosen[choice].JsonName}; give one of them.");
        }
    }

    private void Field(JsonElement value, FieldDescriptor field, string place)
    {
        if (!field.IsRepeated)
        {
            Value(value, field, place);
            return;
        }

        if (value.ValueKind != JsonValueKind.Array)
        {
            Refuse(place, value, "a list in [ ]");
            return;
        }

        var index = 0;
        foreach (var item in value.EnumerateArray())
        {
            Value(item, field, $"{place}[{index++}]");
        }
    }

    private void Value(JsonElement value, FieldDescriptor field, string place)
    {
        if (ValueKinds.IsMoment(field))
        {
            if (!ValueKinds.IsMoment(value))
            {
                Refuse(place, value, "a moment, as \"2026-01-31T08:00:00Z\"");
            }
        }
        else if (field.FieldType == FieldType.Message)
        {
            Message(value, field.MessageType, place);
        }
        else if (ValueKinds.Expected(value, field) is { } expected)
        {
            Refuse(place, value, expected);
        }
    }

    private void Refuse(string place, JsonElement value, string expected) =>
        problems.Add($"{(place.Length == 0 ? "the whole file" : place)}: {ValueKinds.Show(value)} is not {expected}.");
}
