namespace SwapSolver.Web.Tests;

/// <summary>Where things stand in the repository, and what was built beside these tests.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A program of the same configuration as these tests.</summary>
    /// <param name="project">Folder of its project, from the root.</param>
    /// <param name="name">Name of the program.</param>
    public static string Program(string project, string name)
    {
        // tests/SwapSolver.Web.Tests/bin/Debug/net10.0
        var built = Path.GetRelativePath(Path.Combine(Root, "tests", "SwapSolver.Web.Tests"), AppContext.BaseDirectory);
        return Path.Combine(Root, project, built, name);
    }

    private static string FindRoot()
    {
        var place = new DirectoryInfo(AppContext.BaseDirectory);
        while (place is not null && !File.Exists(Path.Combine(place.FullName, "SwapSolver.sln")))
        {
            place = place.Parent;
        }

        return place?.FullName ?? throw new InvalidOperationException("no SwapSolver.sln above these tests");
    }
}
