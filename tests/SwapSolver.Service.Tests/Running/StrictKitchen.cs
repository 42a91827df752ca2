namespace SwapSolver.Service.Tests.Running;

/// <summary>One service that is only ever asked what it must refuse: its solver must stay idle.</summary>
public sealed class StrictKitchen : IAsyncLifetime
{
    public const string Name = "a kitchen that refuses";

    private readonly CountingSolver solver = new();

    private RunningService? service;

    public RunningService Service => service!;

    public async Task InitializeAsync() => service = await RunningService.Start(solver);

    public async Task DisposeAsync() => await Service.DisposeAsync();

    /// <summary>Asks and expects a refusal that cost no solve.</summary>
    internal Task<Refusal> Refuses<T>(Func<RunningService, Grpc.Core.AsyncUnaryCall<T>> ask) => WithoutASolve(() => Refusal.Of(() => ask(Service)));

    /// <summary>The same of a question that is answered piece by piece.</summary>
    internal Task<Refusal> Refuses<T>(Func<RunningService, Grpc.Core.AsyncServerStreamingCall<T>> ask) => WithoutASolve(() => Refusal.Of(() => ask(Service)));

    private async Task<Refusal> WithoutASolve(Func<Task<Refusal>> ask)
    {
        var before = solver.Solves;
        var refusal = await ask();
        Assert.Equal(before, solver.Solves);
        return refusal;
    }
}

[CollectionDefinition(StrictKitchen.Name)]
public sealed class StrictKitchenTests : ICollectionFixture<StrictKitchen>;
