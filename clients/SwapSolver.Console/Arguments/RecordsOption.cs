using System.Text.RegularExpressions;

namespace SwapSolver.Console.Arguments;

/// <summary>Where the records are, as it is typed.</summary>
internal static partial class RecordsOption
{
    /// <summary>A folder by its whole path, since the service runs elsewhere; the connection string of a server as it is.</summary>
    public static string Resolve(string place) => NamesAHost().IsMatch(place) ? place : Path.GetFullPath(place);

    [GeneratedRegex(@"(^|;)\s*(Host|Server)\s*=", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NamesAHost();
}
