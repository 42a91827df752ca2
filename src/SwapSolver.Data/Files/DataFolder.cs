namespace SwapSolver.Data.Files;

/// <summary>The folder that facts, bands, words and rules lie in.</summary>
/// <param name="Path">Path of the folder.</param>
public sealed record DataFolder(string Path)
{
    /// <summary>Reads one file.</summary>
    /// <param name="name">File below the folder, with forward slashes.</param>
    /// <exception cref="DataFaultException">It is missing or not JSON.</exception>
    public JsonPlace Read(string name)
    {
        var path = System.IO.Path.Combine(Path, name);
        if (!File.Exists(path))
        {
            throw new DataFaultException(name, 1, 1, string.Empty, "this data file is missing");
        }

        ReadOnlyMemory<byte> bytes = File.ReadAllBytes(path);
        return JsonPlace.Read(new SourceText(name, bytes.Span.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes));
    }

    /// <summary>The JSON files of a folder below this one, by name.</summary>
    /// <exception cref="DataFaultException">The folder is missing.</exception>
    public IReadOnlyList<string> JsonFilesOf(string folder)
    {
        var path = System.IO.Path.Combine(Path, folder);
        return Directory.Exists(path)
            ? [.. Directory.EnumerateFiles(path, "*.json").Select(file => $"{folder}/{System.IO.Path.GetFileName(file)}").Order(StringComparer.Ordinal)]
            : throw new DataFaultException(folder, 1, 1, string.Empty, "this data folder is missing");
    }
}
