using System.Text.Json;
using Google.Protobuf.Reflection;
using Google.Protobuf.WellKnownTypes;

namespace SwapSolver.Console.Files;

/// <summary>Which JSON values a field takes.</summary>
internal static class ValueKinds
{
    private const int LongestShown = 40;

    /// <summary>What the field takes instead of this value; null where the value is good.</summary>
    public static string? Expected(JsonElement value, FieldDescriptor field) => field.FieldType switch
    {
        FieldType.String when value.ValueKind != JsonValueKind.String => "a text in \" \"",
        FieldType.Bool when value.ValueKind is not (JsonValueKind.True or JsonValueKind.False) => "true or false",
        FieldType.Double when !IsFinite(value) => "a number",
        FieldType.Int32 when !IsWhole(value) => "a whole number",
        FieldType.Enum when !IsMember(value, field.EnumType) => $"one of {Members(field.EnumType)}",
        _ => null,
    };

    /// <summary>Whether the field holds a moment, which JSON writes as text.</summary>
    public static bool IsMoment(FieldDescriptor field) => field.FieldType == FieldType.Message && field.MessageType.FullName == Timestamp.Descriptor.FullName;

    /// <summary>Whether the value is a moment.</summary>
    public static bool IsMoment(JsonElement value) => value.ValueKind == JsonValueKind.String && value.TryGetDateTimeOffset(out _);

    /// <summary>The value as a fault shows it, cut where it is long.</summary>
    public static string Show(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        _ when value.GetRawText() is { Length: > LongestShown } text => $"{text[..LongestShown]}...",
        _ => value.GetRawText(),
    };

    private static bool IsFinite(JsonElement value) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number);

    // 4.0 is as whole as 4, and the contract's own parser takes both.
    private static bool IsWhole(JsonElement value) =>
        IsFinite(value) && value.GetDouble() is >= int.MinValue and <= int.MaxValue and var number && double.IsInteger(number);

    private static bool IsMember(JsonElement value, EnumDescriptor members) => value.ValueKind switch
    {
        JsonValueKind.String => members.FindValueByName(value.GetString()) is not null,
        JsonValueKind.Number => value.TryGetInt32(out var number) && members.FindValueByNumber(number) is not null,
        _ => false,
    };

    private static string Members(EnumDescriptor members) =>
        string.Join(", ", members.Values.Where(member => member.Number != 0).Select(member => member.Name));
}
