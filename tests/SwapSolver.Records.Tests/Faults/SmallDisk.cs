using System.Diagnostics;

namespace SwapSolver.Records.Tests.Faults;

/// <summary>A real file system of a few megabytes, in memory, over a folder. Where this machine lets nobody mount one, a file
/// size limit of the same width does not stand in for it: the test fails and says so.</summary>
internal sealed class SmallDisk : IAsyncDisposable
{
    private readonly string folder;

    private SmallDisk(string folder) => this.folder = folder;

    /// <summary>Mounts it.</summary>
    public static async Task<SmallDisk> At(string folder)
    {
        await Run("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", folder);
        return new SmallDisk(folder);
    }

    /// <summary>Makes it larger.</summary>
    public Task MakeRoom() => Run("mount", "-o", "remount,size=32m", folder);

    public async ValueTask DisposeAsync() => await Run("umount", "-l", folder);

    private static async Task Run(params string[] words)
    {
        string[] all = Environment.IsPrivilegedProcess ? words : ["sudo", "-n", .. words];
        using var process = Process.Start(new ProcessStartInfo(all[0], all[1..]) { RedirectStandardError = true })!;
        var error = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"'{string.Join(' ', all)}' failed: {error}");
    }
}
