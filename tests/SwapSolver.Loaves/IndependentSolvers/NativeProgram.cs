using System.Diagnostics;

namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>Runs an installed program. One that is missing is a failure, never a skip.</summary>
public static class NativeProgram
{
    /// <summary>Processor time that a program may take: what it settles in it does not hang on what else the machine does.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>How often the processor time is looked at.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    /// <summary>Runs it to its end and returns what it printed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        }) ?? throw new InvalidOperationException($"'{program}' did not start");
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        while (!process.WaitForExit(Look))
        {
            if (Taken(process) <= Patience)
            {
                continue;
            }

            process.Kill();
            throw new TimeoutException($"'{program}' took more than {Patience.TotalSeconds} s of the processor for {string.Join(' ', arguments)}");
        }

        return process.ExitCode == 0
            ? output.GetAwaiter().GetResult()
            : throw new InvalidOperationException($"'{program}' ended with {process.ExitCode}: {errors.GetAwaiter().GetResult()}");
    }

    private static TimeSpan Taken(Process process)
    {
        try
        {
            return process.TotalProcessorTime;
        }
        catch (InvalidOperationException)
        {
            // It has just ended.
            return TimeSpan.Zero;
        }
    }
}
