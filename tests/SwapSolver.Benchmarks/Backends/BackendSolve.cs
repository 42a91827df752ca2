using BenchmarkDotNet.Attributes;
using SwapSolver.OrTools;
using SwapSolver.Solving.Models;

namespace SwapSolver.Benchmarks.Backends;

/// <summary>The same models by each backend that the package offers for them.</summary>
public class BackendSolve
{
    private static readonly TimeSpan Budget = TimeSpan.FromMinutes(1);

    private IReadOnlyList<Model> models = [];

    /// <summary>Names of the questions.</summary>
    public static IEnumerable<string> Names => Questions.All.Select(question => question.Name);

    /// <summary>The question.</summary>
    [ParamsSource(nameof(Names))]
    public string Question { get; set; } = string.Empty;

    /// <summary>Gathers the models.</summary>
    [GlobalSetup]
    public void Gather() => models = Questions.ModelsOf(Question);

    /// <summary>Branch and bound over the linear solver, the one in use.</summary>
    [Benchmark(Baseline = true)]
    public double Branching() => Solve(Backend.Branching);

    /// <summary>CBC.</summary>
    [Benchmark]
    public double Cbc() => Solve(Backend.Cbc);

    /// <summary>SCIP.</summary>
    [Benchmark]
    public double Scip() => Solve(Backend.Scip);

    /// <summary>HiGHS.</summary>
    [Benchmark]
    public double Highs() => Solve(Backend.Highs);

    private double Solve(Backend backend)
    {
        var solver = new OrToolsSolver(backend);
        return models.Sum(model => solver.Solve(model, Budget, CancellationToken.None) is { HasPoint: true } found ? found.Objective : 0);
    }
}
