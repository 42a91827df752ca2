using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace SwapSolver.Records.Tests.Engines;

/// <summary>A real PostgreSQL server of these tests' own, in a folder of its own and on a free loopback port. It is stopped
/// after them. Where no server program is on the machine, the tests that need it fail.</summary>
public sealed class PostgresServer : IDisposable
{
    private const string User = "baker";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    private static readonly string[] InstalledIn = ["/usr/lib/postgresql", "/usr/local/bin", "/usr/bin"];

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("kitchen-server-");

    private readonly int port = FreePort();

    private int databases;

    public PostgresServer()
    {
        RunAs("chmod", "0777", folder.FullName);
        // Trust: the server listens on loopback for as long as the tests run, and holds nothing but what they wrote.
        Run(Program("initdb"), "-D", Cluster, "-U", User, "-A", "trust", "--no-sync", "-E", "UTF8");
        Start();
    }

    private string Cluster => Path.Combine(folder.FullName, "cluster");

    /// <summary>The connection string of a new, empty database.</summary>
    public string NewDatabase()
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"kitchen{Interlocked.Increment(ref databases)}");
        Run(Program("createdb"), "-h", "127.0.0.1", "-p", PortText, "-U", User, name);
        return $"Host=127.0.0.1;Port={PortText};Username={User};Database={name};Timeout=15";
    }

    /// <summary>Starts the server and waits until it answers.</summary>
    public void Start() => Run(
        Program("pg_ctl"), "start", "-w", "-t", "60", "-D", Cluster, "-l", Path.Combine(folder.FullName, "log"),
        "-o", $"-p {PortText} -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c max_connections=400");

    /// <summary>Stops the server at once, whoever is asking it.</summary>
    /// <param name="mode">As the server's own control program names it: fast ends what runs, immediate is as a loss of power.</param>
    public void Stop(string mode = "fast") => Run(Program("pg_ctl"), "stop", "-w", "-t", "60", "-D", Cluster, "-m", mode);

    public void Dispose()
    {
        Stop();
        RunAs("rm", "-rf", folder.FullName);
    }

    private string PortText => port.ToString(CultureInfo.InvariantCulture);

    private static string Program(string name) =>
        InstalledIn.Where(Directory.Exists)
            .SelectMany(place => Directory.EnumerateFiles(place, name, new EnumerationOptions { RecurseSubdirectories = place.EndsWith("postgresql", StringComparison.Ordinal) }))
            .FirstOrDefault()
        ?? throw new InvalidOperationException($"PostgreSQL's '{name}' is not on this machine; tests/run.sh installs it");

    /// <summary>Runs a program of the server. It refuses the super-user, so the tests of one become the system's nobody.</summary>
    private static void Run(params string[] words)
    {
        if (Environment.IsPrivilegedProcess)
        {
            RunAs(["setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", .. words]);
        }
        else
        {
            RunAs(words);
        }
    }

    private static void RunAs(params string[] words)
    {
        // What the server says goes to its own log: a pipe that it inherits would never close.
        var start = new ProcessStartInfo("sh", ["-c", "exec \"$@\" >/dev/null 2>&1 </dev/null", "sh", .. words]) { WorkingDirectory = Path.GetTempPath() };
        using var process = Process.Start(start)!;
        if (!process.WaitForExit(Patience) || process.ExitCode != 0)
        {
            throw new InvalidOperationException($"'{string.Join(' ', words)}' failed");
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
