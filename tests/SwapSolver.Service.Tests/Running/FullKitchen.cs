using Grpc.Core;
using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Tests.Running;

/// <summary>A service whose only place for solving is taken, and the only seat for who waits too, until it is disposed.</summary>
internal sealed class FullKitchen : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly CancellationTokenSource leave = new();

    private FullKitchen(RunningService service) => Service = service;

    /// <summary>The service.</summary>
    public RunningService Service { get; }

    /// <summary>Who has the place.</summary>
    public Task Baking { get; private set; } = Task.CompletedTask;

    /// <summary>Who waits for it.</summary>
    public Task Waiting { get; private set; } = Task.CompletedTask;

    /// <summary>Its places.</summary>
    public SolveRoom Room => (SolveRoom)Service.Parts.GetService(typeof(SolveRoom))!;

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
        kitchen.Baking = Bakes.Vary(kitchen.Service, Bakes.Rolls, options).ResponseAsync;
        await begun.Task.WaitAsync(Patience);
        kitchen.Waiting = Bakes.Resize(kitchen.Service, Bakes.Rolls, options).ResponseAsync;
        Assert.True(SpinWait.SpinUntil(() => kitchen.Room.WaitingInside == 1, Patience), "nobody waits");
        return kitchen;
    }

    /// <summary>Both leave.</summary>
    public Task Leave() => leave.CancelAsync();

    public async ValueTask DisposeAsync()
    {
        await Leave();
        await Task.WhenAny(Task.WhenAll(Baking, Waiting), Task.Delay(Patience));
        await Service.DisposeAsync();
        leave.Dispose();
    }
}
