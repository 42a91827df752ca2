namespace SwapSolver.House.Tests;

/// <summary>The files of the house as they stand on the disk, without what is built from them.</summary>
internal static class SourceTree
{
    private static readonly string[] NotSource = ["bin", "obj", ".git", "TestResults", "node_modules", "BenchmarkDotNet.Artifacts"];

    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A path below the root.</summary>
    public static string At(string path) => Path.Combine(Root, path);

    /// <summary>The files below a folder of the root that match, with their paths from the root; none where the folder is not there.</summary>
    public static IReadOnlyList<string> Files(string folder, string pattern) =>
        [.. Walk(At(folder), pattern).Select(Relative).Order(StringComparer.Ordinal)];

    /// <summary>The text of a file named from the root.</summary>
    public static string Text(string path) => File.ReadAllText(At(path));

    private static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static IEnumerable<string> Walk(string folder, string pattern)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        return Directory.EnumerateFiles(folder, pattern).Concat(
            Directory.EnumerateDirectories(folder)
                .Where(path => !NotSource.Contains(Path.GetFileName(path)))
                .SelectMany(path => Walk(path, pattern)));
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SwapSolver.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"no SwapSolver.sln above {AppContext.BaseDirectory}");
    }
}
