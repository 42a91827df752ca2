using System.Collections.Concurrent;
using System.Diagnostics;
using SwapSolver.Service.Tests.Fuzz;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Random requests of every method and broken bodies and frames, as many as told: no end is a fault of the service, nothing hangs,
/// and memory stays what it is.</summary>
internal static class Fuzz
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Share of the run after which the service has grown to what it is.</summary>
    private const double Filling = 0.2;

    /// <summary>Runs it.</summary>
    /// <param name="requests">How many random requests.</param>
    /// <param name="bodies">How many broken bodies.</param>
    public static async Task<int> Run(int requests, int bodies)
    {
        await using var service = await ServiceProcess.Start(
            ("Limits:SolvesWaiting", "100"), ("Limits:CallSeconds", "1"), ("Limits:StreamSeconds", "1"), ("Limits:AnswerBytes", "4000000"));
        using var wire = new Wire(service.HttpAddress, service.GrpcAddress, service.Key);
        var (faults, codes) = (new ConcurrentBag<string>(), new ConcurrentDictionary<string, int>());
        var memory = new ConcurrentQueue<double>();
        var (clock, done) = (Stopwatch.StartNew(), 0);
        var options = new ParallelOptions { MaxDegreeOfParallelism = 4 };
        await Parallel.ForAsync(0, requests + bodies, options, async (number, cancel) =>
        {
            // Bodies lie evenly among the requests.
            var isBody = (long)number * bodies / (requests + bodies) != ((long)number + 1) * bodies / (requests + bodies);
            var end = isBody ? await wire.SendBroken(number, cancel).WaitAsync(Patience, cancel) : await wire.SendRandom(number, Patience);
            if (end is not null)
            {
                codes.AddOrUpdate($"{end.Code}", 1, (_, count) => count + 1);
                if (Wire.IsOurFault(end.Code))
                {
                    faults.Add($"{number} {end.Code} {end.Told}");
                    await System.Console.Error.WriteLineAsync($"{number} {end.Code} {end.Told}");
                }
            }

            if (Interlocked.Increment(ref done) % Math.Max(1, (requests + bodies) / 500) == 0)
            {
                memory.Enqueue(service.ResidentMegabytes);
                await System.Console.Error.WriteLineAsync($"{done} of {requests + bodies}, {clock.Elapsed.TotalSeconds:0} s, {memory.Last():0} MB");
            }
        });

        var late = memory.Skip((int)(Filling * memory.Count)).ToList();
        var half = late.Count / 2;
        var growth = late.Skip(half).Average() / late.Take(half).Average();
        return LoadPage.Write("What nobody should send", [
            Found.Told("random requests, broken bodies and frames", $"{requests}, {bodies}"),
            Found.AtMost("ends that are INTERNAL, UNKNOWN, DATA_LOSS or UNIMPLEMENTED", faults.Count, 0),
            Found.Told("ends", $"{string.Join(", ", codes.OrderByDescending(code => code.Value).Select(code => $"{code.Key} {code.Value}"))}"),
            new Found("the service still runs", service.Runs ? "yes" : "no", "yes", service.Runs),
            Found.AtMost("resident memory, later half against earlier half after filling", growth, 1.1),
            Found.Told("least and most of it after filling", $"{late.Min():0} and {late.Max():0} MB"),
        ]);
    }
}
