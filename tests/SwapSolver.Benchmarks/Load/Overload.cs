using System.Collections.Concurrent;
using System.Diagnostics;
using Grpc.Core;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Four times as many questions as can be answered come in, at a steady pace, whatever becomes of those before.</summary>
internal static class Overload
{
    private const double Times = 4;

    private const int Alone = 3_000;

    private const int AfterwardsAtOnce = 20;

    private static readonly TimeSpan MeasuredFor = TimeSpan.FromSeconds(15);

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <summary>Runs it.</summary>
    /// <param name="lasts">How long the overload lasts.</param>
    public static async Task<int> Run(TimeSpan lasts)
    {
        await using var service = await ServiceProcess.Start();
        using var channel = service.Open();
        var caller = new Caller(channel.CreateCallInvoker());
        var number = 0;
        int Next() => Interlocked.Increment(ref number);
        var warm = Stopwatch.StartNew();
        while (warm.Elapsed < MeasuredFor)
        {
            await caller.Ask(Next());
        }

        var (alone, peak) = await Normal(caller, Next);
        var ends = new ConcurrentBag<Called>();
        var open = new ConcurrentDictionary<Task, bool>();
        var (clock, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        for (var sent = 0; clock.Elapsed < lasts; sent++)
        {
            var due = TimeSpan.FromSeconds(sent / (Times * peak));
            if (due > clock.Elapsed)
            {
                await Task.Delay(due - clock.Elapsed);
            }

            var call = Asked(caller, Next(), ends);
            open.TryAdd(call, true);
            _ = call.ContinueWith(done => open.TryRemove(done, out _), TaskScheduler.Default);
        }

        var (during, callers) = (ends.ToList(), (Environment.CpuUsage.TotalTime - before) / clock.Elapsed);
        await Task.WhenAll(open.Keys);
        // Back to normal: the first time after which twenty calls in a row take what they took before.
        var back = Stopwatch.StartNew();
        var normal = alone.At(0.5);
        var recovered = TimeSpan.MaxValue;
        while (back.Elapsed < Patience && recovered == TimeSpan.MaxValue)
        {
            var (at, some) = (back.Elapsed, new List<TimeSpan>());
            for (var call = 0; call < AfterwardsAtOnce; call++)
            {
                var end = await caller.Ask(Next());
                some.Add(end.Code == StatusCode.OK ? end.Took : Patience);
            }

            recovered = some.At(0.5) <= normal * 1.5 ? at : recovered;
        }

        // Once more: processors here are quicker in one minute and slower in the next, and what is told is a ratio.
        var (aloneAfter, peakAfter) = await Normal(caller, Next);
        var (beside, most) = ((List<TimeSpan>)[.. alone, .. aloneAfter], (peak + peakAfter) / 2);
        var accepted = during.Where(end => end.Code == StatusCode.OK).Select(end => end.Took).ToList();
        var refused = during.Where(end => end.Code == StatusCode.ResourceExhausted).Select(end => end.Took).ToList();
        return LoadPage.Write("Four times what can be answered", [
            Found.Told("lasted", $"{lasts.TotalSeconds:0} s"),
            Found.Told("sent / answered / refused / ended otherwise", $"{during.Count} / {accepted.Count} / {refused.Count} / {during.Count - accepted.Count - refused.Count}"),
            Found.AtLeast("answered a second against the peak", accepted.Count / lasts.TotalSeconds / most, 0.8),
            Found.Told("the peak before and after, a second", $"{peak:0} and {peakAfter:0}"),
            Found.AtMost("99 % of the refused knew it within", refused.At(0.99).TotalMilliseconds, 50, " ms"),
            Found.Told("half of the refused knew it within", $"{refused.At(0.5).TotalMilliseconds:0.0} ms"),
            Found.Told("p99 of one caller alone before, after, of the answered", $"{alone.At(0.99).TotalMilliseconds:0}, {aloneAfter.At(0.99).TotalMilliseconds:0} and {accepted.At(0.99).TotalMilliseconds:0} ms"),
            Found.AtMost("p99 of the answered against p99 of one caller alone", accepted.At(0.99) / beside.At(0.99), 2),
            Found.AtMost("back to normal after", recovered.TotalSeconds, 5, " s"),
            Found.AtMost("calls that ended otherwise", during.Count - accepted.Count - refused.Count, 0),
            Found.Told("processors that the callers take meanwhile", $"{callers:0.00} of {Environment.ProcessorCount}"),
            Found.Told("resident memory at the end", $"{service.ResidentMegabytes:0} MB"),
        ]);
    }

    /// <summary>What is usual: the times of a caller who is alone, and how much is answered a second where as many ask at once as most is answered for.</summary>
    private static async Task<(List<TimeSpan> Alone, double Peak)> Normal(Caller caller, Func<int> next)
    {
        var alone = new List<TimeSpan>();
        for (var call = 0; call < Alone; call++)
        {
            alone.Add((await caller.Ask(next())).Took);
        }

        var peak = 0.0;
        for (var atOnce = 1; atOnce <= 2 * Environment.ProcessorCount; atOnce++)
        {
            peak = Math.Max(peak, await Answered(caller, atOnce, next));
        }

        return (alone, peak);
    }

    private static async Task Asked(Caller caller, int number, ConcurrentBag<Called> ends)
    {
        // Never on the pace-maker's own turn.
        await Task.Yield();
        ends.Add(await caller.Ask(number, DateTime.UtcNow + Patience));
    }

    private static async Task<double> Answered(Caller caller, int callers, Func<int> next)
    {
        var clock = Stopwatch.StartNew();
        var counts = await Task.WhenAll(Enumerable.Range(0, callers).Select(async _ =>
        {
            await Task.Yield();
            var count = 0;
            while (clock.Elapsed < MeasuredFor)
            {
                count += (await caller.Ask(next())).Code == StatusCode.OK ? 1 : 0;
            }

            return count;
        }));
        return counts.Sum() / clock.Elapsed.TotalSeconds;
    }
}
