namespace SwapSolver.Service.Tests.Running;

/// <summary>One service that answers questions, for all tests that only ask.</summary>
public sealed class OpenKitchen : IAsyncLifetime
{
    public const string Name = "a kitchen that answers";

    private RunningService? service;

    public CountingSolver Solver { get; } = new();

    public RunningService Service => service!;

    public async Task InitializeAsync() => service = await RunningService.Start(Solver);

    public async Task DisposeAsync() => await Service.DisposeAsync();
}

[CollectionDefinition(OpenKitchen.Name)]
public sealed class OpenKitchenTests : ICollectionFixture<OpenKitchen>;
