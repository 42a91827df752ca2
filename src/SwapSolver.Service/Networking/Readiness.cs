using Microsoft.Extensions.Diagnostics.HealthChecks;
using SwapSolver.Records;
using SwapSolver.Service.Records;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Networking;

/// <summary>Whether the service can take questions: its solver solves, its records can be reached, and it was not told to stop.</summary>
internal sealed class Readiness(ISolver solver, KitchenShelf shelf, IHostApplicationLifetime life) : IHealthCheck
{
    private static readonly TimeSpan SolveTime = TimeSpan.FromSeconds(1);

    /// <summary>One column that costs, at its lower limit.</summary>
    internal static readonly Model Smallest = new([new Column("grams", 1, 2, false, 1)], []);

    /// <inheritdoc/>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        if (life.ApplicationStopping.IsCancellationRequested)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("the service was told to stop"));
        }

        try
        {
            _ = shelf.Today();
        }
        catch (RecordsFaultException fault)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy(fault.Message));
        }

        return Task.FromResult(solver.Solve(Smallest, SolveTime, cancellationToken).Outcome == Outcome.Optimal
            ? HealthCheckResult.Healthy()
            : HealthCheckResult.Unhealthy("the solver does not solve"));
    }
}
