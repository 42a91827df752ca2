using System.Text.Json;

namespace SwapSolver.Console.Files;

/// <summary>Says where and why a text is not JSON.</summary>
internal static class JsonFault
{
    /// <summary>Line and column from 1, then the reason.</summary>
    public static string Describe(JsonException fault, ReadOnlySpan<byte> json, FileKind kind)
    {
        if (json.Trim(" \t\r\n"u8).IsEmpty)
        {
            return $"this is empty: a {kind.Name} was expected.";
        }

        var line = fault.LineNumber ?? 0;
        var column = Utf8Text.Column(json, line, fault.BytePositionInLine ?? 0);
        return $"line {line + 1}, column {column}: this is not JSON: {Reason(fault.Message)}";
    }

    // The library repeats the place behind its reason, counted from 0; ours stands in front.
    private static string Reason(string message)
    {
        var place = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (place < 0 ? message : message[..place]).Trim();
    }
}
