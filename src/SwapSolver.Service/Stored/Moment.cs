using System.Globalization;
using Google.Protobuf.WellKnownTypes;

namespace SwapSolver.Service.Stored;

/// <summary>Moments as the records hold them: RFC 3339 in UTC, to the millisecond, so that text sorts as time does.</summary>
internal static class Moment
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    /// <summary>A moment as text.</summary>
    public static string Write(DateTimeOffset moment) => moment.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>A moment of the contract as text; cut to the millisecond.</summary>
    public static string Write(Timestamp moment) => Write(moment.ToDateTimeOffset());

    /// <summary>A moment of the contract; null where there is no text.</summary>
    public static Timestamp? Read(string? text) => text is null
        ? null
        : Timestamp.FromDateTime(DateTime.ParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal));
}
