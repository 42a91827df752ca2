using System.Diagnostics;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Embedded;

/// <summary>The service's program, as it is built beside the console.</summary>
internal sealed class ServiceProgram
{
    private const string Name = "SwapSolver.Service";

    /// <summary>The same compiled ahead of time, where it was published so: it is ready in a third of the time.</summary>
    private const string CompiledName = "SwapSolver.Embedded";

    /// <summary>Room for new objects before any is looked through, hexadecimal as the setting asks for it [bytes]: 16 MiB, above what the start takes.</summary>
    private const string YoungBytes = "1000000";

    private readonly string folder;
    private readonly string file;
    private readonly string[] before;

    private ServiceProgram(string folder, string file, params string[] before)
    {
        this.folder = folder;
        this.file = file;
        this.before = before;
    }

    /// <summary>Finds it: its own executable, which starts fastest, or else its assembly.</summary>
    /// <exception cref="ServiceNotReachedException">Neither is there.</exception>
    public static ServiceProgram Find()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "service");
        foreach (var name in (string[])[CompiledName, Name])
        {
            var executable = Path.Combine(folder, OperatingSystem.IsWindows() ? name + ".exe" : name);
            if (File.Exists(executable))
            {
                return new ServiceProgram(folder, executable);
            }
        }

        var assembly = Path.Combine(folder, Name + ".dll");
        return File.Exists(assembly)
            ? new ServiceProgram(folder, "dotnet", assembly)
            : throw new ServiceNotReachedException(
                $"the embedded service is not in {folder}.",
                "Build clients/SwapSolver.Console again, or name a running service with --server URL.");
    }

    /// <summary>How to start it.</summary>
    public ProcessStartInfo StartInfo(params IEnumerable<string> arguments)
    {
        // The caller's own folder must not lend the service its settings files.
        var start = new ProcessStartInfo(file, [.. before, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_gcServer"] = "0";
        // Where nobody set it otherwise: what is read at the start is not sorted through again and again while it is read.
        start.Environment.TryAdd("DOTNET_GCgen0size", YoungBytes);
        return start;
    }
}
