using System.Text;
using System.Text.Unicode;

namespace SwapSolver.Console.Files;

/// <summary>Text in UTF-8: where it is not, and where in it a byte lies.</summary>
internal static class Utf8Text
{
    /// <summary>Says where bytes stop to be UTF-8; null where all of them are.</summary>
    public static string? FindFault(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        if (bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF]))
        {
            return "this file is UTF-16. Save it as UTF-8.";
        }

        var good = 0;
        while (Rune.DecodeFromUtf8(bytes[good..], out _, out var length) == System.Buffers.OperationStatus.Done)
        {
            good += length;
        }

        var before = bytes[..good];
        var line = before.Count((byte)'\n');
        var inLine = good - (before.LastIndexOf((byte)'\n') + 1);
        return $"line {line + 1}, column {Column(bytes, line, inLine)}: this is not UTF-8 text. Save the file as UTF-8.";
    }

    /// <summary>The column, from 1 and in characters, of a byte in a line (both from 0).</summary>
    public static int Column(ReadOnlySpan<byte> text, long line, long byteInLine)
    {
        var start = 0;
        for (var passed = 0L; passed < line; passed++)
        {
            start += text[start..].IndexOf((byte)'\n') + 1;
        }

        var end = (int)Math.Min(text.Length, start + byteInLine);
        return Encoding.UTF8.GetCharCount(text[start..end]) + 1;
    }
}
