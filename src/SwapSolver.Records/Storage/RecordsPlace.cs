using System.Text.RegularExpressions;

namespace SwapSolver.Records.Storage;

/// <summary>Tells a folder from a server.</summary>
public static partial class RecordsPlace
{
    /// <summary>Whether a place is the connection string of a server, as <c>Host=localhost;Database=kitchen</c>, and no folder.</summary>
    public static bool IsServer(string place) => NamesAHost().IsMatch(place);

    [GeneratedRegex(@"(^|;)\s*(Host|Server)\s*=", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NamesAHost();
}
