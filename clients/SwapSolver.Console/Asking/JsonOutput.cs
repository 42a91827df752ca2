using Google.Protobuf;

namespace SwapSolver.Console.Asking;

/// <summary>The answer as scripts read it: the proto3 JSON of the response, zeros written.</summary>
internal static class JsonOutput
{
    private static readonly JsonFormatter Formatter = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true).WithIndentation());

    private static readonly JsonFormatter OneLine = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true));

    /// <summary>Writes one piece of a longer answer to standard output, on a line of its own.</summary>
    public static void WriteLine(IMessage piece) => StandardOutput.Write(Line(piece));

    /// <summary>A piece of a longer answer on a line of its own.</summary>
    public static string Line(IMessage piece) => OneLine.Format(piece) + "\n";

    /// <summary>Writes a response to standard output.</summary>
    public static void Write(IMessage response) => StandardOutput.Write(Formatter.Format(response) + "\n");
}
