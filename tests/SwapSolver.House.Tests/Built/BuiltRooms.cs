using System.Reflection;

namespace SwapSolver.House.Tests.Built;

/// <summary>The rooms as they were built, beside these tests. The contract's is generated from the protos, and not a room of ours.</summary>
internal static class BuiltRooms
{
    /// <summary>Names of the rooms, as <c>SwapSolver.Kitchen</c>.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. SourceTree.Files("src", "*.csproj").Select(path => Path.GetFileNameWithoutExtension(path)).Where(name => name != "SwapSolver.Contract"),
    ];

    /// <summary>The assembly of a room.</summary>
    public static Assembly Load(string room) => Assembly.Load(room);

    /// <summary>The file of a room's assembly.</summary>
    public static string FileOf(string room) => Path.Combine(AppContext.BaseDirectory, $"{room}.dll");
}
