using System.Collections.Concurrent;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Fuzz;

/// <summary>Whatever comes over the wire is answered, or refused with a code that says whose fault it is: never ours, never unknown.</summary>
public sealed class FuzzTests
{
    /// <summary>Random requests; the benchmarks' <c>--fuzz</c> sends as many as it is told.</summary>
    private const int Requests = 1_500;

    private const int Bodies = 1_500;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task No_request_that_its_descriptor_allows_is_a_fault_of_the_service()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:SolvesWaiting", "100"), ("Limits:CallSeconds", "1"), ("Limits:StreamSeconds", "1"));
        Assert.True(Wire.Methods.Count > 20);
        using var wire = new Wire(service.Http.BaseAddress!, service.GrpcAddress, service.Key);
        var faults = new ConcurrentBag<string>();
        await Parallel.ForAsync(0, Requests, new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, _) =>
        {
            var end = await wire.SendRandom(number, Patience);
            if (Wire.IsOurFault(end.Code))
            {
                faults.Add($"{number} {end.Code} {end.Told}");
            }
        });
        Assert.Empty(faults);
        Assert.NotEmpty((await Bakes.Vary(service, Bakes.Hazelnut)).Answers);
    }

    [Fact]
    public async Task No_body_that_is_none_is_a_fault_of_the_service()
    {
        await using var service = await RunningService.Start();
        var faults = new ConcurrentBag<string>();
        using var wire = new Wire(service.Http.BaseAddress!, service.GrpcAddress, service.Key);
        await Parallel.ForAsync(0, Bodies, new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, cancel) =>
        {
            if (await wire.SendBroken(number, cancel).WaitAsync(Patience, cancel) is { } end && Wire.IsOurFault(end.Code))
            {
                faults.Add($"{number}: {end.Code} {end.Told}");
            }
        });
        Assert.Empty(faults);
        Assert.NotEmpty((await Bakes.Vary(service, Bakes.Hazelnut)).Answers);
    }
}
