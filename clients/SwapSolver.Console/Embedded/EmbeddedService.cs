using Grpc.Core;
using Grpc.Net.Client;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Embedded;

/// <summary>A service of our own: started for one call on a private socket, stopped after it.</summary>
internal sealed class EmbeddedService : IServiceConnection
{
    private readonly PrivateFolder folder;
    private readonly ServiceProcess process;
    private readonly GrpcChannel channel;

    private EmbeddedService(PrivateFolder folder, ServiceProcess process)
    {
        this.folder = folder;
        this.process = process;
        channel = SocketChannel.Open(folder.SocketPath);
    }

    /// <summary>Starts the service and does not wait for it.</summary>
    /// <param name="records">Folder of its records; null for the usual one.</param>
    /// <param name="cancel">Cancelled where the caller wants to be let go at once.</param>
    /// <exception cref="ServiceNotReachedException">It is not there or cannot be started.</exception>
    public static EmbeddedService Start(string? records, CancellationToken cancel)
    {
        var program = ServiceProgram.Find();
        var folder = PrivateFolder.Create();
        try
        {
            return new EmbeddedService(folder, ServiceProcess.Start(program, folder.SocketPath, records, cancel));
        }
        catch
        {
            folder.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public async Task<CallInvoker> ReadyAsync(CancellationToken cancel)
    {
        await process.WaitUntilReadyAsync(cancel);
        return channel.CreateCallInvoker();
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<string>> ExplainSilenceAsync() =>
        ["the embedded service stopped during the call.", .. await process.LastWordsAsync()];

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        channel.Dispose();
        await process.DisposeAsync();
        folder.Dispose();
    }
}
