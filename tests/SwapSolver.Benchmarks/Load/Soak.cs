using System.Diagnostics;
using Grpc.Core;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Half of what can be answered, for a long time: memory, handles and threads stay what they are.</summary>
internal static class Soak
{
    private static readonly TimeSpan Apart = TimeSpan.FromSeconds(2);

    /// <summary>Share of the time after which what the service keeps has filled.</summary>
    private const double Filling = 0.3;

    /// <summary>Runs it.</summary>
    /// <param name="lasts">How long.</param>
    public static async Task<int> Run(TimeSpan lasts)
    {
        // What is kept of answers fills early, so that it is no slope later.
        await using var service = await ServiceProcess.Start(("Limits:AnswerBytes", "4000000"));
        using var channel = service.Open();
        var caller = new Caller(channel.CreateCallInvoker());
        var seen = new List<(double Minutes, double Megabytes, int Handles, int Threads)>();
        var (clock, calls, failed, look) = (Stopwatch.StartNew(), 0, 0, TimeSpan.Zero);
        while (clock.Elapsed < lasts)
        {
            // One caller who waits as long as each answer took asks for half of what one place can do; two of them for half of all.
            var both = await Task.WhenAll(caller.Ask(++calls), caller.Ask(++calls));
            failed += both.Count(end => end.Code != StatusCode.OK);
            await Task.Delay(both.Max(end => end.Took));
            if (clock.Elapsed > look)
            {
                seen.Add((clock.Elapsed.TotalMinutes, service.ResidentMegabytes, service.Handles, service.Threads));
                look = clock.Elapsed + Apart;
            }
        }

        var late = seen.Where(one => one.Minutes > Filling * lasts.TotalMinutes).ToList();
        var (slope, error) = Slope([.. late.Select(one => one.Minutes)], [.. late.Select(one => one.Megabytes)]);
        var (handles, handleError) = Slope([.. late.Select(one => one.Minutes)], [.. late.Select(one => (double)one.Handles)]);
        return LoadPage.Write("Half of what can be answered, for long", [
            Found.Told("lasted, calls", $"{lasts.TotalMinutes:0} min, {calls}"),
            Found.AtMost("calls that failed", failed, 0),
            Found.Told("resident memory, first and last look after filling", $"{late[0].Megabytes:0} and {late[^1].Megabytes:0} MB"),
            Found.AtMost("slope of resident memory less twice its standard error [MB/min]", slope - (2 * error), 0),
            Found.AtMost("growth of resident memory over the time by that slope", slope * (late[^1].Minutes - late[0].Minutes) / late[0].Megabytes, 0.1),
            Found.Told("slope and its standard error", $"{slope:0.00} and {error:0.00} MB/min"),
            Found.AtMost("slope of open handles less twice its standard error [1/min]", handles - (2 * handleError), 0),
            Found.Told("handles and threads, first and last", $"{late[0].Handles} and {late[^1].Handles}, {late[0].Threads} and {late[^1].Threads}"),
        ]);
    }

    /// <summary>Least squares: slope and its standard error, with neighbours taken for alike (each standard error is doubled, since memory of one moment is much like that of the next).</summary>
    private static (double Slope, double Error) Slope(double[] x, double[] y)
    {
        var (meanX, meanY) = (x.Average(), y.Average());
        var spread = x.Sum(one => (one - meanX) * (one - meanX));
        var slope = x.Zip(y, (one, other) => (one - meanX) * (other - meanY)).Sum() / spread;
        var rest = x.Zip(y, (one, other) => other - meanY - (slope * (one - meanX))).Sum(one => one * one);
        return (slope, 2 * Math.Sqrt(rest / (x.Length - 2) / spread));
    }
}
