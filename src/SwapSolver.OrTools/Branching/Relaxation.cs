using Google.OrTools.LinearSolver;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Branching;

/// <summary>A model whose whole columns may take parts, within limits that can be set anew. Each solve starts from where the
/// last one ended, which is what makes a tree of them quick. One native solver, owned and disposed with it.</summary>
internal sealed class Relaxation : IDisposable
{
    /// <summary>A kitchen's program takes some hundred steps; a limit by steps, not by time, keeps the same answer for the same question.</summary>
    private const string Limits = "max_number_of_iterations: 2000";

    private readonly Model model;
    private readonly Solver solver;
    private readonly Variable[] variables;
    private readonly MPSolverParameters parameters = new();
    private readonly double[] low;
    private readonly double[] high;

    /// <summary>Writes the model.</summary>
    public Relaxation(Model model)
    {
        this.model = model;
        solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("the package has no linear solver");
        var parts = model with { Columns = [.. model.Columns.Select(column => column with { IsWhole = false })] };
        (variables, _) = ModelTranslation.Write(parts, solver);
        // After new limits the last basis is still dual feasible; a presolve would throw it away.
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.PRESOLVE, (int)MPSolverParameters.PresolveValues.PRESOLVE_OFF);
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.LP_ALGORITHM, (int)MPSolverParameters.LpAlgorithmValues.DUAL);
        solver.SetSolverSpecificParametersAsString(Limits);
        Whole = [.. Enumerable.Range(0, variables.Length).Where(column => model.Columns[column].IsWhole)];
        Low = [.. model.Columns.Select(column => column.Low)];
        High = [.. model.Columns.Select(column => column.High)];
        low = [.. Low];
        high = [.. High];
        Values = new double[variables.Length];
    }

    /// <summary>The columns that are to be whole.</summary>
    public IReadOnlyList<int> Whole { get; }

    /// <summary>Lower limits of the columns; those of whole ones may be changed between solves.</summary>
    public double[] Low { get; }

    /// <summary>Upper limits, likewise.</summary>
    public double[] High { get; }

    /// <summary>The point that the last solve found.</summary>
    public double[] Values { get; }

    /// <summary>Its objective, in our own arithmetic.</summary>
    public double Objective { get; private set; }

    /// <summary>How many programs were solved.</summary>
    public int Solves { get; private set; }

    /// <summary>Solves within the limits as they stand.</summary>
    /// <param name="budget">Most time to take.</param>
    /// <returns>Optimal, Infeasible, or OutOfTime where the solver settled nothing.</returns>
    public Outcome Solve(TimeSpan budget)
    {
        foreach (var column in Whole)
        {
            if (Low[column] > High[column])
            {
                return Outcome.Infeasible;
            }

            if (low[column] != Low[column] || high[column] != High[column])
            {
                variables[column].SetBounds(Low[column], High[column]);
                (low[column], high[column]) = (Low[column], High[column]);
            }
        }

        Solves++;
        solver.SetTimeLimit(Math.Max(1, (long)budget.TotalMilliseconds));
        var status = solver.Solve(parameters);
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE))
        {
            // Costs that are nearly all alike can send the dual simplex in circles: once more from the beginning, and as it likes.
            solver.Reset();
            status = solver.Solve();
        }

        if (status != Solver.ResultStatus.OPTIMAL)
        {
            return status == Solver.ResultStatus.INFEASIBLE ? Outcome.Infeasible : Outcome.OutOfTime;
        }

        for (var column = 0; column < variables.Length; column++)
        {
            // A limit passed in the last digits would be cut at again and again.
            Values[column] = Math.Clamp(variables[column].SolutionValue(), Low[column], High[column]);
        }

        Objective = model.Objective(Values);
        return Outcome.Optimal;
    }

    /// <summary>What a unit of each column costs at the last point, beyond what it saves.</summary>
    public double[] ReducedCosts() => [.. variables.Select(variable => variable.ReducedCost())];

    /// <summary>Stops a solve that runs; may be called from another thread.</summary>
    public void Interrupt() => solver.InterruptSolve();

    /// <inheritdoc/>
    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }
}
