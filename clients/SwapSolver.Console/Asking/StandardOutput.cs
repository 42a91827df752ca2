using System.Text;

namespace SwapSolver.Console.Asking;

/// <summary>Standard output, which carries the answer and nothing else.</summary>
internal static class StandardOutput
{
    /// <summary>Writes text in UTF-8 on every system.</summary>
    public static void Write(string text)
    {
        if (OperatingSystem.IsWindows())
        {
            System.Console.OutputEncoding = Encoding.UTF8;
        }

        using var output = System.Console.OpenStandardOutput();
        output.Write(Encoding.UTF8.GetBytes(text));
    }
}
