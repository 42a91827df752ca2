using System.Diagnostics;
using System.Globalization;

namespace SwapSolver.Records.Tests.Faults;

/// <summary>A program of its own that writes into the records, and says each write when it was acknowledged.</summary>
internal static class WriterProgram
{
    /// <summary>Far above any run on a machine under load.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>Starts it.</summary>
    /// <param name="place">The place of the records.</param>
    /// <param name="first">Number of the first write.</param>
    /// <param name="count">How many.</param>
    /// <param name="before">What stands before it on the command line, as another user.</param>
    public static Process Start(string place, int first, int count, params string[] before)
    {
        string[] words = [.. before, "dotnet", Path.Combine(AppContext.BaseDirectory, "SwapSolver.Records.Writer.dll"), place, first.ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture)];
        return Process.Start(new ProcessStartInfo(words[0], words[1..]) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Path.GetTempPath() })!;
    }

    /// <summary>Runs it to its end: its exit code, and its last line.</summary>
    public static async Task<(int ExitCode, string LastLine)> Run(string place, int first, int count, params string[] before)
    {
        using var process = Start(place, first, count, before);
        var error = process.StandardError.ReadToEndAsync();
        var lines = (await process.StandardOutput.ReadToEndAsync().WaitAsync(Patience)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        await process.WaitForExitAsync().WaitAsync(Patience);
        Assert.Empty(await error);
        return (process.ExitCode, lines.Length > 0 ? lines[^1] : string.Empty);
    }
}
