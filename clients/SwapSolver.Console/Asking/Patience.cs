using System.Diagnostics;

namespace SwapSolver.Console.Asking;

/// <summary>How long nobody minds that nothing is said: the first word on standard error comes within half a second.</summary>
internal static class Patience
{
    private static readonly TimeSpan Whole = TimeSpan.FromSeconds(0.4);

    /// <summary>What is left of it, from the console's own start, which is when somebody began to wait.</summary>
    public static TimeSpan Left
    {
        get
        {
            using var console = Process.GetCurrentProcess();
            var left = Whole - (DateTime.Now - console.StartTime);
            return left > TimeSpan.Zero ? left : TimeSpan.Zero;
        }
    }
}
