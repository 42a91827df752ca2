namespace SwapSolver.Service.Whole;

/// <summary>A folder of the system's for one call, which nobody else may read; gone after it.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("swapsolver-");

    /// <summary>Path of a file in it.</summary>
    public string File(string name) => Path.Combine(folder.FullName, name);

    /// <inheritdoc/>
    public void Dispose() => folder.Delete(recursive: true);
}
