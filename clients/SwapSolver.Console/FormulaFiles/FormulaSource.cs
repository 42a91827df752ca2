namespace SwapSolver.Console.FormulaFiles;

/// <summary>Reads the bytes of a formula from a file or from standard input.</summary>
internal static class FormulaSource
{
    /// <summary>What stands for standard input.</summary>
    public const string StandardInput = "-";

    // Largest formula file that is read; the 200 lines that a formula may have need about 20 kB.
    private const int LargestFormula = 1 << 20;

    /// <summary>Reads all bytes of a formula, or says why that cannot be done.</summary>
    public static Task<Checked<byte[]>> ReadAsync(string path, CancellationToken cancel) =>
        ReadAsync(path, LargestFormula, "a formula file", cancel);

    /// <summary>Reads all bytes of a file, or says why that cannot be done.</summary>
    /// <param name="path">The file, or - for standard input.</param>
    /// <param name="largestBytes">Largest file that is read [bytes].</param>
    /// <param name="thing">What the file is.</param>
    /// <param name="cancel">Ends the wait.</param>
    public static async Task<Checked<byte[]>> ReadAsync(string path, int largestBytes, string thing, CancellationToken cancel)
    {
        try
        {
            // A terminal blocks until its line ends, so the wait is what gets cancelled.
            return await Task.Run(() => Read(path, largestBytes), cancel).WaitAsync(cancel);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<byte[]>.Bad(Reason(path, thing, fault));
        }
    }

    private static Checked<byte[]> Read(string path, int largestBytes)
    {
        using var stream = path == StandardInput ? System.Console.OpenStandardInput() : File.OpenRead(path);
        var bytes = new byte[largestBytes + 1];
        var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return length > largestBytes
            ? Checked<byte[]>.Bad($"too large: at most {largestBytes >> 20} MiB is read.")
            : bytes[..length];
    }

    private static string Reason(string path, string thing, Exception fault) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException =>
            $"there is no such file. Give the path of {thing}, - for standard input{(thing.Contains("formula", StringComparison.Ordinal) ? ", or a stored formula as formulas/ID" : "")}.",
        UnauthorizedAccessException when Directory.Exists(path) => $"this is a folder. Give the path of {thing}.",
        UnauthorizedAccessException => "this file may not be read: its permissions forbid it.",
        _ => $"this file cannot be read: {fault.Message}",
    };
}
