namespace SwapSolver.Console.Files;

/// <summary>Writes a text to a file, whole or not at all: what stood there before stays until the new text is complete.</summary>
internal static class FileTarget
{
    /// <summary>Writes, and says what went wrong; null where nothing did.</summary>
    public static async Task<string?> WriteAsync(string path, string text, CancellationToken cancel)
    {
        var beside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            if (Directory.Exists(path))
            {
                return $"{path}: this is a folder. Give the path of a file.";
            }

            await File.WriteAllTextAsync(beside, text, cancel);
            File.Move(beside, path, overwrite: true);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return fault is DirectoryNotFoundException
                ? $"{path}: there is no such folder. Make it first, or give another path."
                : $"{path}: this file cannot be written: {fault.Message}";
        }
        finally
        {
            if (File.Exists(beside))
            {
                File.Delete(beside);
            }
        }
    }
}
