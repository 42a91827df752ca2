using System.ComponentModel;
using System.Diagnostics;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Embedded;

/// <summary>The running service: it says when it is ready, and ends when its standard input closes.</summary>
internal sealed class ServiceProcess : IAsyncDisposable
{
    private const string ReadyLine = "ready";
    private static readonly TimeSpan LongestStart = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan LongestStop = TimeSpan.FromSeconds(2);

    // A native solve cannot be stopped from outside, and who pressed Ctrl-C is let go within half a second.
    private static readonly TimeSpan LongestStopAfterInterruption = TimeSpan.FromSeconds(0.2);

    private readonly Process process;
    private readonly CancellationToken cancel;
    private readonly Task<bool> ready;
    private readonly Task<IReadOnlyList<string>> lastWords;

    private ServiceProcess(Process process, CancellationToken cancel)
    {
        this.process = process;
        this.cancel = cancel;
        ready = WatchAsync(process.StandardOutput);
        lastWords = LastLines.ReadAsync(process.StandardError);
    }

    /// <summary>Starts the service and does not wait for it.</summary>
    public static ServiceProcess Start(ServiceProgram program, string socketPath, string? records, CancellationToken cancel)
    {
        try
        {
            string[] own = records is null ? [] : ["--records", records];
            return new ServiceProcess(Process.Start(program.StartInfo(["--embedded-socket", socketPath, .. own]))!, cancel);
        }
        catch (Win32Exception fault)
        {
            throw new ServiceNotReachedException("the embedded service could not be started.", fault.Message);
        }
    }

    /// <summary>Waits until the service listens.</summary>
    /// <exception cref="ServiceNotReachedException">It ended before, or took too long.</exception>
    public async Task WaitUntilReadyAsync(CancellationToken cancel)
    {
        try
        {
            if (await ready.WaitAsync(LongestStart, cancel))
            {
                return;
            }
        }
        catch (TimeoutException)
        {
            throw new ServiceNotReachedException($"the embedded service was not ready within {LongestStart.TotalSeconds} s.");
        }

        throw new ServiceNotReachedException(["the embedded service ended before it was ready.", .. await LastWordsAsync()]);
    }

    /// <summary>What an ended service last wrote to its standard error; nothing from one that still runs.</summary>
    public async Task<IReadOnlyList<string>> LastWordsAsync()
    {
        await Task.WhenAny(lastWords, Task.Delay(LongestStop));
        return lastWords.IsCompletedSuccessfully ? await lastWords : [];
    }

    /// <summary>Asks the service to end, and ends it where it does not.</summary>
    public async ValueTask DisposeAsync()
    {
        process.StandardInput.Close();
        using var patience = new CancellationTokenSource(cancel.IsCancellationRequested ? LongestStopAfterInterruption : LongestStop);
        try
        {
            await process.WaitForExitAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            process.Kill();
        }

        process.Dispose();
    }

    // Reads on to the end: a pipe that nobody empties would hold the service up, and none of it is ours to print.
    private static Task<bool> WatchAsync(StreamReader output)
    {
        var listening = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);
        _ = Task.Run(async () =>
        {
            while (await output.ReadLineAsync() is { } line)
            {
                if (line == ReadyLine)
                {
                    listening.TrySetResult(true);
                }
            }

            listening.TrySetResult(false);
        });
        return listening.Task;
    }
}
