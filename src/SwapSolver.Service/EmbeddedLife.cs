namespace SwapSolver.Service;

/// <summary>The life of a service that a console started for one call: it says when it listens, and ends when the console
/// closes its standard input, so that it cannot outlive it.</summary>
internal static class EmbeddedLife
{
    private const string Ready = "ready";

    /// <summary>Says that the service listens, and watches for the end.</summary>
    public static void Begin(IHostApplicationLifetime lifetime)
    {
        Console.Out.WriteLine(Ready);
        Console.Out.Flush();
        var watch = new Thread(() =>
        {
            using var input = Console.OpenStandardInput();
            Span<byte> byteRead = stackalloc byte[1];
            while (input.Read(byteRead) > 0)
            {
                // Nothing that comes in has a meaning; only its end has.
            }

            lifetime.StopApplication();
        })
        {
            IsBackground = true,
        };
        watch.Start();
    }
}
