using System.Text;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Embedded;

/// <summary>A fresh folder that only this user may enter, for the socket of one call.</summary>
internal sealed class PrivateFolder : IDisposable
{
    // The kernels' field for a socket path: 104 bytes with its end on macOS, 108 on Linux.
    private const int LongestSocketPathBytes = 103;

    private readonly string path;

    private PrivateFolder(string path) => this.path = path;

    /// <summary>Where the socket shall be.</summary>
    public string SocketPath => Path.Combine(path, "service.sock");

    /// <summary>Makes the folder; on Unix its mode is 0700 from the start.</summary>
    public static PrivateFolder Create()
    {
        var folder = new PrivateFolder(Directory.CreateTempSubdirectory("swapsolver-").FullName);
        if (Encoding.UTF8.GetByteCount(folder.SocketPath) <= LongestSocketPathBytes)
        {
            return folder;
        }

        folder.Dispose();
        throw new ServiceNotReachedException(
            $"the folder for temporary files has too long a path for a socket: {Path.GetTempPath()}",
            "Set TMPDIR to a shorter one.");
    }

    /// <summary>Removes the folder and what is in it.</summary>
    public void Dispose()
    {
        try
        {
            Directory.Delete(path, recursive: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // An empty folder left among temporary files harms nobody, and the answer has been given.
        }
    }
}
