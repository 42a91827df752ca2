using System.Text;

namespace SwapSolver.Console.Files;

/// <summary>Reads a table as text. Tables come in UTF-8 or, as older ones of the USDA do, in Latin-1.</summary>
internal static class TableText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, or why it cannot be read.</summary>
    public static async Task<Checked<string>> ReadAsync(string path, CancellationToken cancel)
    {
        var bytes = await FileSource.ReadAsync(path, FileKind.Table, cancel);
        if (!bytes.IsGood)
        {
            return Checked<string>.Bad([.. bytes.Problems.Select(problem => $"{FileSource.PlaceOf(path)}: {problem}")]);
        }

        if (bytes.Value.AsSpan().StartsWith<byte>([0xFF, 0xFE]) || bytes.Value.AsSpan().StartsWith<byte>([0xFE, 0xFF]))
        {
            return Checked<string>.Bad($"{FileSource.PlaceOf(path)}: this file is UTF-16. Save it as UTF-8.");
        }

        var text = Decode(bytes.Value).TrimStart('\uFEFF');
        return string.IsNullOrWhiteSpace(text) ? Checked<string>.Bad($"{FileSource.PlaceOf(path)}: this is empty: a table was expected.") : text;
    }

    private static string Decode(byte[] bytes)
    {
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
