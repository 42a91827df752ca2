using SwapSolver.Benchmarks.Load;
using SwapSolver.Forecasts;

namespace SwapSolver.Benchmarks.Bakes;

/// <summary>What one bake costs a processor: processor time, so that what else a machine does counts little.</summary>
internal static class BakeTime
{
    private const int Warm = 5;

    /// <summary>Runs it.</summary>
    /// <param name="bakes">How many.</param>
    public static int Run(int bakes)
    {
        var found = BakeCells.Names.Select(loaf =>
        {
            var times = Enumerable.Range(0, Warm + bakes).Select(_ => Timed(loaf)).Skip(Warm).ToList();
            return Found.AtMost($"one bake {(loaf == "tin" ? "in a tin" : "on a tray")}, as fine as a time is worked out in, median [ms]", times.At(0.5).TotalMilliseconds, 100);
        });
        return LoadPage.Write("One bake", [.. found]);
    }

    private static TimeSpan Timed(string loaf)
    {
        var before = Environment.CpuUsage.TotalTime;
        BakeCells.Minutes(loaf, Bake.Fine);
        return Environment.CpuUsage.TotalTime - before;
    }
}
