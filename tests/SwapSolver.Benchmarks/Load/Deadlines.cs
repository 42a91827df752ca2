using System.Collections.Concurrent;
using System.Diagnostics;
using Grpc.Core;
using SwapSolver.Benchmarks.Calls;
using SwapSolver.V1;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Calls with little time, hard models among them, and callers who leave: each ends in time, and the solver is let go.</summary>
internal static class Deadlines
{
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(50);

    private static readonly TimeSpan Freed = TimeSpan.FromMilliseconds(100);

    /// <summary>Runs it.</summary>
    /// <param name="calls">How many calls.</param>
    public static async Task<int> Run(int calls)
    {
        // Long searches may take every place here: what is looked at is how soon each is given back.
        await using var service = await ServiceProcess.Start(("Limits:SolvesWaiting", "8"));
        using var channel = service.Open();
        var caller = new Caller(channel.CreateCallInvoker());
        for (var warm = 0; warm < 40; warm++)
        {
            await caller.Ask(-1 - warm + 1_000_000);
        }

        var late = new ConcurrentBag<TimeSpan>();
        var codes = new ConcurrentBag<StatusCode>();
        await Parallel.ForAsync(0, calls, new ParallelOptions { MaxDegreeOfParallelism = 2 }, async (number, _) =>
        {
            var time = TimeSpan.FromMilliseconds(new Random(number).Next(5, 1_500));
            var (began, deadline) = (Stopwatch.GetTimestamp(), DateTime.UtcNow + time);
            var code = number % 5 == 0 ? await Hard(channel, number, deadline, CancellationToken.None) : (await caller.Ask(number, deadline)).Code;
            codes.Add(code);
            late.Add(Stopwatch.GetElapsedTime(began) - time);
        });

        // Who leaves: the gauge of running solves is back at none.
        var freed = new List<TimeSpan>();
        for (var number = 0; number < 40; number++)
        {
            using var leave = new CancellationTokenSource();
            var call = Hard(channel, number, DateTime.UtcNow.AddMinutes(1), leave.Token);
            var patience = Stopwatch.StartNew();
            while (await Running(service) == 0 && patience.Elapsed < TimeSpan.FromSeconds(5) && !call.IsCompleted)
            {
                await Task.Delay(5);
            }

            await Task.Delay(new Random(number).Next(300));
            await leave.CancelAsync();
            var clock = Stopwatch.StartNew();
            await call;
            while (await Running(service) > 0 && clock.Elapsed < TimeSpan.FromSeconds(10))
            {
                await Task.Delay(2);
            }

            freed.Add(clock.Elapsed);
        }

        const string metric = "swapsolver_solve_cancel_duration_seconds";
        var within = await service.Metric(line => line.StartsWith($"{metric}_bucket", StringComparison.Ordinal) && line.Contains("le=\"0.1\"", StringComparison.Ordinal));
        var all = await service.Metric(line => line.StartsWith($"{metric}_count", StringComparison.Ordinal));
        return LoadPage.Write("Little time, and callers who leave", [
            Found.Told("calls, of them out of time", $"{codes.Count}, {codes.Count(code => code == StatusCode.DeadlineExceeded)}"),
            Found.AtLeast("ended within their deadline and 50 ms", late.Count(one => one <= Grace) / (double)late.Count, 0.999),
            Found.AtMost("the latest after its deadline", late.Max().TotalMilliseconds, 500, " ms"),
            Found.AtMost("codes other than OK, DEADLINE_EXCEEDED and RESOURCE_EXHAUSTED", codes.Count(code => code is not (StatusCode.OK or StatusCode.DeadlineExceeded or StatusCode.ResourceExhausted)), 0),
            Found.AtLeast("solves that were stopped, by the metrics", all, 1),
            Found.AtLeast("of them let go within 100 ms", all == 0 ? 0 : within / all, 0.999),
            Found.AtMost("p95 from a caller's leaving to no solve running, as the metrics page shows it", freed.At(0.95).TotalMilliseconds, Freed.TotalMilliseconds, " ms"),
            Found.Told("half of them, and the longest", $"{freed.At(0.5).TotalMilliseconds:0} and {freed.Max().TotalMilliseconds:0} ms"),
        ]);
    }

    private static Task<double> Running(ServiceProcess service) => service.Metric(line => line.StartsWith("swapsolver_solves_running", StringComparison.Ordinal));

    /// <summary>A trade-off of two ratios and a chart: minutes of solving.</summary>
    private static async Task<StatusCode> Hard(Grpc.Net.Client.GrpcChannel channel, int number, DateTime deadline, CancellationToken leave)
    {
        var formula = new Formula(FormulaMessage.Of(Questions.All[number % Questions.All.Count].Formula)) { DisplayName = $"Hard {number}" };
        try
        {
            using var call = new ReformulationService.ReformulationServiceClient(channel).TraceFrontier(
                new TraceFrontierRequest { Formula = formula, Trades = { new Trade { Reading = "salt" }, new Trade { Reading = "hydration", Better = Trade.Types.Better.Higher } } }, new CallOptions(deadline: deadline, cancellationToken: leave));
            while (await call.ResponseStream.MoveNext(CancellationToken.None))
            {
                // Its points do not matter here.
            }

            return StatusCode.OK;
        }
        catch (RpcException fault)
        {
            return fault.StatusCode;
        }
    }
}
