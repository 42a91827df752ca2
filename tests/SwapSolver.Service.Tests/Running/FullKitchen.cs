using Grpc.Core;
using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Tests.Running;

/// <summary>A service whose only place for solving is taken, and the only seat for who waits too, until it is disposed.</summary>
internal sealed class FullKitchen : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly CancellationTokenSource leave = new();

    private Task inside = Task.CompletedTask;

    private FullKitchen(RunningService service) => Service = service;

    /// <summary>The service.</summary>
    public RunningService Service { get; }

    /// <summary>Opens it, and fills it.</summary>
    public static async Task<FullKitchen> Open()
    {
        var begun = new TaskCompletionSource();
        var solver = new StandInSolver
        {
            Instead = (solution, cancel) =>
            {
                begun.TrySetResult();
                cancel.WaitHandle.WaitOne();
                return solution;
            },
        };
        var kitchen = new FullKitchen(await RunningService.Start(solver, null, ("Limits:SolvesAtOnce", "1"), ("Limits:SolvesWaiting", "1")));
        var options = new CallOptions(cancellationToken: kitchen.leave.Token);
        var baking = Bakes.Vary(kitchen.Service, Bakes.Rolls, options).ResponseAsync;
        await begun.Task;
        kitchen.inside = Task.WhenAll(baking, Bakes.Resize(kitchen.Service, Bakes.Rolls, options).ResponseAsync);
        var room = (SolveRoom)kitchen.Service.Parts.GetService(typeof(SolveRoom))!;
        Assert.True(SpinWait.SpinUntil(() => room.Waiting == 1, Patience), "nobody waits");
        return kitchen;
    }

    public async ValueTask DisposeAsync()
    {
        await leave.CancelAsync();
        await Task.WhenAny(inside, Task.Delay(Patience));
        await Service.DisposeAsync();
        leave.Dispose();
    }
}
