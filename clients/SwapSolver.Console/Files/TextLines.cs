using System.Text;

namespace SwapSolver.Console.Files;

/// <summary>Reads a text as lines; empty lines and lines that open with # are left out.</summary>
internal static class TextLines
{
    /// <summary>The lines of a file or of standard input.</summary>
    public static async Task<Checked<IReadOnlyList<string>>> ReadAsync(string path, CancellationToken cancel)
    {
        var bytes = await FileSource.ReadAsync(path, FileKind.Lines, cancel);
        var lines = bytes.IsGood ? Decode(bytes.Value) : Checked<IReadOnlyList<string>>.Bad(bytes.Problems);
        return lines.IsGood ? lines : Checked<IReadOnlyList<string>>.Bad([.. lines.Problems.Select(problem => $"{FileSource.PlaceOf(path)}: {problem}")]);
    }

    /// <summary>The lines of a text.</summary>
    public static Checked<IReadOnlyList<string>> Of(string text)
    {
        string[] lines = [.. text.TrimStart('\uFEFF').Split(['\n', '\r'], StringSplitOptions.TrimEntries).Where(line => line.Length > 0 && line[0] != '#')];
        return lines.Length > 0 ? lines : Checked<IReadOnlyList<string>>.Bad("there is no line in it. Write one ingredient a line, as 2 large eggs.");
    }

    private static Checked<IReadOnlyList<string>> Decode(byte[] bytes) =>
        Utf8Text.FindFault(bytes) is { } fault ? Checked<IReadOnlyList<string>>.Bad(fault) : Of(Encoding.UTF8.GetString(bytes));
}
