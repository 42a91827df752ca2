using SwapSolver.Console.Screens;

namespace SwapSolver.Console.Asking;

/// <summary>Standard error, where everything goes that is not the answer.</summary>
internal static class ErrorOutput
{
    /// <summary>Writes a fault, under the program's name.</summary>
    public static void Write(string words) => System.Console.Error.WriteLine($"swapsolver: {CleanText.Of(words)}");

    /// <summary>Writes a line that belongs to the fault above.</summary>
    public static void WriteMore(string words) => System.Console.Error.WriteLine($"  {CleanText.Of(words)}");
}
