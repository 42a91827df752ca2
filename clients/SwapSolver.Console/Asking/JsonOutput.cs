using Google.Protobuf;

namespace SwapSolver.Console.Asking;

/// <summary>The answer as scripts read it: the proto3 JSON of the response, zeros written.</summary>
internal static class JsonOutput
{
    private static readonly JsonFormatter Formatter = new(JsonFormatter.Settings.Default.WithFormatDefaultValues(true).WithIndentation());

    /// <summary>Writes a response to standard output.</summary>
    public static void Write(IMessage response) => StandardOutput.Write(Formatter.Format(response) + "\n");
}
