using Grpc.Core;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Faults;

public sealed class FaultInterceptorTests
{
    [Fact]
    public async Task A_fault_of_ours_shows_nothing_of_our_insides()
    {
        var solver = new StandInSolver { Instead = (_, _) => throw new InvalidOperationException("hidden in the solver") };
        await using var service = await RunningService.Start(solver);
        var fault = await Assert.ThrowsAsync<RpcException>(async () => await Bakes.Vary(service, Bakes.Hazelnut));
        Assert.Equal(StatusCode.Internal, fault.StatusCode);
        Assert.DoesNotContain("hidden", fault.Status.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", fault.Status.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", fault.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_a_fault_the_next_question_is_answered()
    {
        var solver = new StandInSolver { Instead = (_, _) => throw new InvalidOperationException("once") };
        await using var service = await RunningService.Start(solver);
        await Assert.ThrowsAsync<RpcException>(async () => await Bakes.Vary(service, Bakes.Hazelnut));
        solver.Instead = null;
        Assert.NotEmpty((await Bakes.Vary(service, Bakes.Hazelnut)).Answers);
    }
}
