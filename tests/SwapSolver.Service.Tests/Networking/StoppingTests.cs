using Grpc.Core;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Networking;

public sealed class StoppingTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task A_call_that_is_being_answered_when_the_service_is_told_to_stop_gets_its_answer()
    {
        var (started, goOn) = (new TaskCompletionSource(), new TaskCompletionSource());
        var solver = new StandInSolver
        {
            Instead = (solution, cancel) =>
            {
                started.TrySetResult();
                goOn.Task.Wait(Patience, cancel);
                return solution;
            },
        };
        var service = await RunningService.Start(solver, null, ("Limits:DrainSeconds", "30"));
        var asked = Bakes.Vary(service, Bakes.Hazelnut);
        await started.Task.WaitAsync(Patience);
        var stopping = service.Stop();
        Assert.False(stopping.IsCompleted);
        goOn.SetResult();
        Assert.NotEmpty((await asked.ResponseAsync.WaitAsync(Patience)).Answers);
        await stopping.WaitAsync(Patience);
        await service.DisposeAsync();
    }

    [Fact]
    public async Task A_call_that_does_not_end_is_cut_off_and_its_solver_stopped()
    {
        var (started, stopped) = (new TaskCompletionSource(), new TaskCompletionSource());
        var solver = new StandInSolver
        {
            Instead = (_, cancel) =>
            {
                started.TrySetResult();
                cancel.WaitHandle.WaitOne();
                stopped.TrySetResult();
                throw new OperationCanceledException(cancel);
            },
        };
        var service = await RunningService.Start(solver, null, ("Limits:DrainSeconds", "1"));
        var asked = Bakes.Vary(service, Bakes.Hazelnut);
        await started.Task.WaitAsync(Patience);
        await service.Stop().WaitAsync(Patience);
        await stopped.Task.WaitAsync(Patience);
        var fault = await Assert.ThrowsAsync<RpcException>(async () => await asked);
        Assert.Contains(fault.StatusCode, new[] { StatusCode.Unavailable, StatusCode.Cancelled });
        await service.DisposeAsync();
    }
}
