using System.Diagnostics;
using Grpc.Core;
using MathNet.Numerics.Distributions;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Half of what can be answered, for a long time: memory, handles and threads stay what they are.</summary>
internal static class Soak
{
    private static readonly TimeSpan Apart = TimeSpan.FromSeconds(2);

    /// <summary>A block of time over which looks are taken together: longer than memory takes to rise and be cleared.</summary>
    private static readonly TimeSpan Block = TimeSpan.FromMinutes(2);

    private const int LeastBlocks = 4;

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
        var (slope, uncertainty) = Slope([.. late.Select(one => one.Minutes)], [.. late.Select(one => one.Megabytes)]);
        var (handles, handlesUncertainty) = Slope([.. late.Select(one => one.Minutes)], [.. late.Select(one => (double)one.Handles)]);
        return LoadPage.Write("Half of what can be answered, for long", [
            Found.Told("lasted, calls", $"{lasts.TotalMinutes:0} min, {calls}"),
            Found.AtMost("calls that failed", failed, 0),
            Found.Told("resident memory, first and last look after filling", $"{late[0].Megabytes:0} and {late[^1].Megabytes:0} MB"),
            Found.AtMost("slope of resident memory less what it is uncertain by [MB/min]", slope - uncertainty, 0),
            Found.AtMost("growth of resident memory over the time by that slope", slope * (late[^1].Minutes - late[0].Minutes) / late[0].Megabytes, 0.1),
            Found.Told("slope and what it is uncertain by (95 %, by blocks of two minutes)", $"{slope:0.00} ± {uncertainty:0.00} MB/min"),
            Found.AtMost("slope of open handles less what it is uncertain by [1/min]", handles - handlesUncertainty, 0),
            Found.Told("handles and threads, first and last", $"{late[0].Handles} and {late[^1].Handles}, {late[0].Threads} and {late[^1].Threads}"),
        ]);
    }

    /// <summary>
    /// Least squares through the means of equal blocks of time: slope, and by how much it is uncertain either way, at 95 %. Memory of
    /// one moment is much like that of the next, and rises and falls as it is cleared every minute or two: looks by themselves
    /// would make the slope seem far surer than it is, and means of blocks that hold a whole rise and fall do not.
    /// </summary>
    private static (double Slope, double Uncertainty) Slope(double[] x, double[] y)
    {
        var blocks = Math.Max(LeastBlocks, (int)((x[^1] - x[0]) / Block.TotalMinutes));
        var each = (x[^1] - x[0]) / blocks;
        var means = x.Zip(y).GroupBy(look => Math.Min(blocks - 1, (int)((look.First - x[0]) / each))).Select(block => (X: block.Average(look => look.First), Y: block.Average(look => look.Second))).ToList();
        var (meanX, meanY) = (means.Average(mean => mean.X), means.Average(mean => mean.Y));
        var spread = means.Sum(mean => (mean.X - meanX) * (mean.X - meanX));
        var slope = means.Sum(mean => (mean.X - meanX) * (mean.Y - meanY)) / spread;
        var rest = means.Sum(mean => Math.Pow(mean.Y - meanY - (slope * (mean.X - meanX)), 2));
        var free = means.Count - 2;
        return (slope, StudentT.InvCDF(0, 1, free, 0.975) * Math.Sqrt(rest / free / spread));
    }
}
