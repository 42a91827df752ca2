using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace SwapSolver.Service.Tests.Cluster;

/// <summary>A real Redis server of these tests' own, on a free loopback port, which writes nothing down. Where the program is not on
/// the machine, the tests that need it fail.</summary>
internal sealed class RedisServer : IDisposable
{
    private readonly Process process;

    public RedisServer()
    {
        using (var listener = new TcpListener(IPAddress.Loopback, 0))
        {
            listener.Start();
            Port = ((IPEndPoint)listener.LocalEndpoint).Port;
        }

        string[] words = ["--port", $"{Port}", "--bind", "127.0.0.1", "--save", "", "--appendonly", "no", "--dir", Path.GetTempPath()];
        process = Process.Start(new ProcessStartInfo("redis-server", words) { RedirectStandardOutput = true })!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
    }

    /// <summary>The port that it listens on.</summary>
    public int Port { get; }

    /// <summary>Ends it at once, whoever is asking it.</summary>
    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            Kill();
        }

        process.Dispose();
    }
}
