using System.Globalization;
using Google.Protobuf.WellKnownTypes;

namespace SwapSolver.Console.Screens;

/// <summary>A moment as a person reads it, in UTC.</summary>
internal static class MomentText
{
    /// <summary>The moment to the minute; empty where there is none.</summary>
    public static string Of(Timestamp? moment) =>
        moment?.ToDateTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) is { } text ? $"{text} UTC" : string.Empty;
}
