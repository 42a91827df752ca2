using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The core of a loaf, minute by minute in the oven and in steps on the rack.</summary>
internal static class CoreCurve
{
    /// <summary>Step on the rack [min].</summary>
    private const double RackStep = 5;

    /// <summary>The curve of a bake.</summary>
    /// <param name="run">The bake.</param>
    /// <param name="baked">Its time to the core target [s].</param>
    /// <param name="pace">Minutes of this kitchen's oven by minutes of the model [1].</param>
    public static ImmutableArray<CorePoint> Of(BakeRun run, double baked, double pace)
    {
        var end = baked / 60 * pace;
        var points = ImmutableArray.CreateBuilder<CorePoint>();
        for (var minute = 0.0; minute < end; minute++)
        {
            points.Add(new CorePoint(new Minutes(minute), BakeStage.Oven, At(run.InOven, minute / pace * 60)));
        }

        points.Add(new CorePoint(new Minutes(end), BakeStage.Oven, At(run.InOven, baked)));
        if (run.Cooled is { } cooled)
        {
            for (var minute = RackStep; minute < cooled / 60; minute += RackStep)
            {
                points.Add(new CorePoint(new Minutes(end + minute), BakeStage.Rack, At(run.OnRack, minute * 60)));
            }

            points.Add(new CorePoint(new Minutes(end + (cooled / 60)), BakeStage.Rack, At(run.OnRack, cooled)));
        }

        return points.ToImmutable();
    }

    private static Celsius At(ImmutableArray<CoreReading> readings, double seconds)
    {
        var after = readings.BinarySearch(new CoreReading(seconds, 0), Comparer<CoreReading>.Create((one, other) => one.Seconds.CompareTo(other.Seconds)));
        if (after >= 0)
        {
            return new Celsius(readings[after].Core);
        }

        after = Math.Clamp(~after, 1, readings.Length - 1);
        var (before, next) = (readings[after - 1], readings[after]);
        return new Celsius(before.Core + ((next.Core - before.Core) * (seconds - before.Seconds) / (next.Seconds - before.Seconds)));
    }
}
