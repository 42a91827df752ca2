using System.Diagnostics;
using System.Globalization;

namespace SwapSolver.Console.Tests.Running;

/// <summary>The processes that a process started, from the system's own table of processes (Linux: /proc).</summary>
internal static class ChildProcesses
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(5);

    /// <summary>Waits until a process has started one, and gives its id.</summary>
    public static async Task<int> FirstOf(Process parent)
    {
        var clock = Stopwatch.StartNew();
        while (clock.Elapsed < BuiltConsole.Patience)
        {
            if (Of(parent.Id).FirstOrDefault() is > 0 and var child)
            {
                return child;
            }

            await Task.Delay(BetweenLooks);
        }

        throw new TimeoutException("no child process was seen");
    }

    /// <summary>Waits until no process has this id any more.</summary>
    public static async Task End(int id)
    {
        var clock = Stopwatch.StartNew();
        while (IsThere(id))
        {
            Assert.True(clock.Elapsed < BuiltConsole.Patience, $"process {id} is still there");
            await Task.Delay(BetweenLooks);
        }
    }

    /// <summary>Whether a process runs; one that ended and waits to be counted does not.</summary>
    public static bool IsThere(int id) => Stat(id) is { State: not ("Z" or "X") };

    private static IEnumerable<int> Of(int parent) => Directory.EnumerateDirectories("/proc")
        .Select(path => int.TryParse(Path.GetFileName(path), NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : 0)
        .Where(id => id > 0 && Stat(id)?.Parent == parent);

    private static (string State, int Parent)? Stat(int id)
    {
        try
        {
            // The name stands in brackets and may hold anything; what follows it is state and parent.
            var text = File.ReadAllText($"/proc/{id}/stat");
            var fields = text[(text.LastIndexOf(')') + 2)..].Split(' ');
            return (fields[0], int.Parse(fields[1], CultureInfo.InvariantCulture));
        }
        catch (IOException)
        {
            return null;
        }
    }
}
