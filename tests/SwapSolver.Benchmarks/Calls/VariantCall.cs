using BenchmarkDotNet.Attributes;
using Grpc.Health.V1;
using Grpc.Net.Client;
using SwapSolver.OrTools;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Benchmarks.Calls;

/// <summary>A variant over gRPC beside the bare solve of its models and an empty call.</summary>
public class VariantCall : IAsyncDisposable
{
    private static readonly TimeSpan Budget = TimeSpan.FromMinutes(1);

    private readonly OrToolsSolver solver = new();

    private IReadOnlyList<Model> models = [];
    private RunningService? service;
    private GrpcChannel? channel;
    private VaryFormulaRequest request = new();
    private int asked;

    /// <summary>Names of the questions.</summary>
    public static IEnumerable<string> Names => Questions.All.Select(question => question.Name);

    /// <summary>The question.</summary>
    [ParamsSource(nameof(Names))]
    public string Question { get; set; } = string.Empty;

    /// <summary>Starts the service on loopback.</summary>
    [GlobalSetup]
    public async Task Start()
    {
        models = Questions.ModelsOf(Question);
        service = await RunningService.Start();
        channel = GrpcChannel.ForAddress(service.GrpcAddress);
        var (_, formula, without) = Questions.All.First(question => question.Name == Question);
        request = new VaryFormulaRequest { Formula = FormulaMessage.Of(formula) };
        request.Without.Add(without);
        await AskedBefore();
    }

    /// <summary>Stops the service.</summary>
    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        channel?.Dispose();
        if (service is not null)
        {
            await service.DisposeAsync();
        }

        GC.SuppressFinalize(this);
    }

    /// <summary>The bare solve of the models.</summary>
    [Benchmark(Baseline = true)]
    public double BareSolve() =>
        models.Sum(model => solver.Solve(model, Budget, CancellationToken.None) is { HasPoint: true } found ? found.Objective : 0);

    /// <summary>The whole call: reading, solving, rechecking, sampling, explaining and writing. The name differs each
    /// time, so that nothing comes from the cache.</summary>
    [Benchmark]
    public Task<VaryFormulaResponse> WholeCall()
    {
        var fresh = request.Clone();
        fresh.Formula.DisplayName = $"asked {asked++}";
        return Ask(fresh);
    }

    /// <summary>The same question again: it comes from the cache.</summary>
    [Benchmark]
    public Task<VaryFormulaResponse> AskedBefore() => Ask(request);

    /// <summary>A call that does nothing.</summary>
    [Benchmark]
    public Task<HealthCheckResponse> EmptyCall() =>
        new Health.HealthClient(channel).CheckAsync(new HealthCheckRequest()).ResponseAsync;

    private Task<VaryFormulaResponse> Ask(VaryFormulaRequest question) =>
        new SubstitutionService.SubstitutionServiceClient(channel).VaryFormulaAsync(question).ResponseAsync;
}
