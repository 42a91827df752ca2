namespace SwapSolver.Console.Files;

/// <summary>Reads the bytes of a file or of standard input.</summary>
internal static class FileSource
{
    /// <summary>What stands for standard input.</summary>
    public const string StandardInput = "-";

    private const int FirstBytes = 1 << 20;

    /// <summary>How a problem names the place.</summary>
    public static string PlaceOf(string path) => path == StandardInput ? "standard input" : path;

    /// <summary>Reads all bytes, or says why that cannot be done.</summary>
    public static async Task<Checked<byte[]>> ReadAsync(string path, FileKind kind, CancellationToken cancel)
    {
        try
        {
            // A terminal blocks until its line ends, so the wait is what gets cancelled.
            return await Task.Run(() => Read(path, kind), cancel).WaitAsync(cancel);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<byte[]>.Bad(Reason(path, kind, fault));
        }
    }

    private static Checked<byte[]> Read(string path, FileKind kind)
    {
        using var stream = path == StandardInput ? System.Console.OpenStandardInput() : File.OpenRead(path);
        using var kept = new MemoryStream(Math.Min(FirstBytes, kind.LargestBytes));
        var piece = new byte[81_920];
        while (stream.Read(piece) is var length and > 0)
        {
            kept.Write(piece, 0, length);
            if (kept.Length > kind.LargestBytes)
            {
                return Checked<byte[]>.Bad($"too large for a {kind.Name}: at most {kind.LargestBytes >> 20} MiB is read.");
            }
        }

        return kept.ToArray();
    }

    private static string Reason(string path, FileKind kind, Exception fault) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException => $"there is no such file. {kind.WayOut}",
        UnauthorizedAccessException when Directory.Exists(path) => $"this is a folder. Give the path of a {kind.Name} file.",
        UnauthorizedAccessException => "this file may not be read: its permissions forbid it.",
        _ => $"this file cannot be read: {fault.Message}",
    };
}
