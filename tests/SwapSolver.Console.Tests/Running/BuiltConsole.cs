using System.Diagnostics;
using System.Text;

namespace SwapSolver.Console.Tests.Running;

/// <summary>The console as it was built, run as a user runs it.</summary>
internal static class BuiltConsole
{
    /// <summary>Far above any call on a machine under load: a run that takes longer hangs.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The built program, of the same configuration as these tests; or the published one that a variable names (publish.sh).</summary>
    public static string Program { get; } = Environment.GetEnvironmentVariable("SWAPSOLVER_PUBLISHED") is { Length: > 0 } published ? published : Path.Combine(
        Root, "clients", "SwapSolver.Console", "bin", Directory.GetParent(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar))!.Name, "net10.0", "swapsolver");

    // What was published is tried whole: each call by the service that its console starts.
    private static bool IsPublished => !Program.StartsWith(Root, StringComparison.Ordinal);

    /// <summary>Path of a demo formula.</summary>
    public static string Demo(string id) => Path.Combine(Root, "data", "formulas", $"{id}.json");

    /// <summary>Runs to the end; where nothing says which records or service, it asks the one that tests share.</summary>
    public static async Task<Ran> Run(params string[] arguments) => await Run(Start(await Addressed(arguments)));

    /// <summary>Runs to the end with a formula on standard input.</summary>
    public static async Task<Ran> RunWithInput(string input, params string[] arguments)
    {
        var process = Start(await Addressed(arguments));
        await process.StandardInput.WriteAsync(input);
        return await Run(process);
    }

    /// <summary>Starts the program and does not wait for it.</summary>
    public static Process Start(string[] arguments, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(Program, arguments)
        {
            WorkingDirectory = Root,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        // What a developer's own kitchen wrote down must not move a test.
        start.Environment["XDG_DATA_HOME"] = Path.Combine(AppContext.BaseDirectory, "no-records");
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    /// <summary>Waits for a started program to end.</summary>
    public static async Task<Ran> Run(Process process)
    {
        using (process)
        {
            process.StandardInput.Close();
            var output = process.StandardOutput.ReadToEndAsync();
            var error = process.StandardError.ReadToEndAsync();
            await process.WaitForExitAsync().WaitAsync(Patience);
            return new Ran(process.ExitCode, await output, await error);
        }
    }

    private static async Task<string[]> Addressed(string[] arguments) =>
        arguments.Any(argument => argument is "--records" or "--server") || IsPublished ? arguments : [.. arguments, "--server", await OneService.AddressAsync()];

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SwapSolver.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"no SwapSolver.sln above {AppContext.BaseDirectory}");
    }
}
