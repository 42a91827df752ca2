namespace SwapSolver.Console.FormulaFiles;

/// <summary>Reads the bytes of a formula from a file or from standard input.</summary>
internal static class FormulaSource
{
    /// <summary>What stands for standard input.</summary>
    public const string StandardInput = "-";

    // Largest formula file that is read; the 200 lines that a formula may have need about 20 kB.
    private const int LargestBytes = 1 << 20;

    /// <summary>Reads all bytes, or says why that cannot be done.</summary>
    public static async Task<Checked<byte[]>> ReadAsync(string path, CancellationToken cancel)
    {
        try
        {
            // A terminal blocks until its line ends, so the wait is what gets cancelled.
            return await Task.Run(() => Read(path), cancel).WaitAsync(cancel);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<byte[]>.Bad(Reason(path, fault));
        }
    }

    private static Checked<byte[]> Read(string path)
    {
        using var stream = path == StandardInput ? System.Console.OpenStandardInput() : File.OpenRead(path);
        var bytes = new byte[LargestBytes + 1];
        var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return length > LargestBytes
            ? Checked<byte[]>.Bad("too large for a formula: at most 1 MiB is read.")
            : bytes[..length];
    }

    private static string Reason(string path, Exception fault) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException =>
            "there is no such file. Give the path of a formula file, - for standard input, or a stored formula as formulas/ID.",
        UnauthorizedAccessException when Directory.Exists(path) => "this is a folder. Give the path of a formula file.",
        UnauthorizedAccessException => "this file may not be read: its permissions forbid it.",
        _ => $"this file cannot be read: {fault.Message}",
    };
}
