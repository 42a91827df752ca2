using System.Runtime.InteropServices;

namespace SwapSolver.Console;

/// <summary>Turns the first Ctrl-C (or a polite request to end) into a cancelled token; a second one ends the process.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration interrupt;
    private readonly PosixSignalRegistration terminate;

    /// <summary>Starts to listen.</summary>
    public Interruption()
    {
        interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Cancel);
        terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Cancel);
    }

    /// <summary>Cancelled once the caller wants to stop.</summary>
    public CancellationToken Token => source.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        interrupt.Dispose();
        terminate.Dispose();
        source.Dispose();
    }

    private void Cancel(PosixSignalContext context)
    {
        // Held back the first time only, so that the embedded service is stopped and its folder removed.
        context.Cancel = !source.IsCancellationRequested;
        source.Cancel();
    }
}
