using System.Diagnostics;
using Google.OrTools.LinearSolver;
using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools;

/// <summary>Solves models with a backend of OR-Tools. Native solvers are made for a call and disposed at its end.</summary>
/// <param name="backend">The backend.</param>
public sealed class OrToolsSolver(Backend backend = Backend.Branching) : ISolver
{
    /// <summary>CBC looks for no point that is less than 1e-5 better than the one it has (its 'increment'), and the package has no
    /// word to change that. Costs a hundred times as large make it 1e-7 of ours.</summary>
    private const double CostFactor = 100;

    /// <summary>How much longer the next turn is: what the turns before it cost is then a third of it.</summary>
    private const int TurnGrowth = 4;

    /// <summary>CBC, whose time runs out while it prepares a model, says at times that the model has no solution: seen of 4,000 solves
    /// of a model that has many, given 1 to 40 ms each, 48 times, never before 0.59 of the time. Only what it says within this share is believed.</summary>
    private const double ShareForAProof = 0.25;

    /// <summary>Time that CBC has at first for what our own search left open; what it settles at all, it mostly settles in this.</summary>
    private static readonly TimeSpan FirstTurn = TimeSpan.FromSeconds(8);

    /// <inheritdoc/>
    public Solution Solve(Model model, TimeSpan budget, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        model.Guard();
        if (backend != Backend.Branching)
        {
            return SolveBy(backend, model, budget, cancel);
        }

        if (Reduction.Of(model) is not { } reduced)
        {
            return Solution.None(Outcome.Infeasible);
        }

        var clock = Stopwatch.StartNew();
        var search = new BranchAndBound(model, reduced, budget, cancel);
        // A point that breaks the model is not believed: another solver is to look.
        var solution = search.Run() is not var (outcome, values) ? null
            : outcome is not (Outcome.Optimal or Outcome.Feasible) ? Solution.None(outcome)
            : model.Broken(values) is null ? StatusTranslation.Checked(model, outcome, values) with { Gap = search.Gap }
            : null;
        return (solution ?? SolveInTurns(model, budget - clock.Elapsed, cancel)) with { Nodes = search.Parts };
    }

    /// <inheritdoc/>
    public LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        model.Guard();
        // Dual values of a program with whole numbers are read as zeros.
        if (model.Columns.FirstOrDefault(column => column.IsWhole) is { } whole)
        {
            throw new ArgumentException($"'{whole.Name}' is whole: such a model has no dual values", nameof(model));
        }

        using var solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("the package has no linear solver");
        var (variables, constraints) = ModelTranslation.Write(model, solver);
        solver.SetTimeLimit(Math.Max(1, (long)budget.TotalMilliseconds));
        using var stop = cancel.Register(static state => ((Solver)state!).InterruptSolve(), solver);
        var status = solver.Solve();
        cancel.ThrowIfCancellationRequested();
        var outcome = StatusTranslation.Read(status);
        if (outcome != Outcome.Optimal)
        {
            return new LinearSolution(Solution.None(outcome), []);
        }

        double[] values = [.. variables.Select(variable => variable.SolutionValue())];
        double[] duals = [.. constraints.Select(constraint => constraint.DualValue())];
        GC.KeepAlive(solver);
        return new LinearSolution(StatusTranslation.Checked(model, outcome, values), duals);
    }

    /// <summary>CBC closes by its cuts what our tree leaves open, but cannot be stopped: it has a thread of its own, which is left to
    /// end by itself where the question is cancelled, and it is asked in turns that grow, so that it does so soon.</summary>
    private static Solution SolveInTurns(Model model, TimeSpan budget, CancellationToken cancel)
    {
        var clock = Stopwatch.StartNew();
        for (var turn = FirstTurn; ; turn *= TurnGrowth)
        {
            var left = budget - clock.Elapsed;
            var limit = left < turn ? left : turn;
            var solving = Task.Factory.StartNew(
                () => SolveBy(Backend.Cbc, model, limit, CancellationToken.None), cancel, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            Task.WaitAny([solving], cancel);
            var solution = solving.GetAwaiter().GetResult();
            if (solution.Outcome is not (Outcome.OutOfTime or Outcome.Feasible) || clock.Elapsed >= budget)
            {
                return solution;
            }
        }
    }

    private static Solution SolveBy(Backend backend, Model model, TimeSpan budget, CancellationToken cancel)
    {
        var clock = Stopwatch.StartNew();
        using var solver = Solver.CreateSolver(NameOf(backend))
            ?? throw new InvalidOperationException($"the package has no backend {backend}");
        var (variables, _) = ModelTranslation.Write(model, solver, CostFactor);
        solver.SetTimeLimit(Math.Max(1, (long)budget.TotalMilliseconds));
        // Solving stops early only by proof: the answer that is printed is the best one, not one within a gap.
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 1e-7);
        using var stop = cancel.Register(static state => ((Solver)state!).InterruptSolve(), solver);
        var status = solver.Solve(parameters);
        cancel.ThrowIfCancellationRequested();
        var outcome = StatusTranslation.Read(status);
        if (outcome == Outcome.Infeasible && backend == Backend.Cbc && clock.Elapsed >= budget * ShareForAProof)
        {
            outcome = Outcome.OutOfTime;
        }

        if (outcome is not (Outcome.Optimal or Outcome.Feasible))
        {
            return Solution.None(outcome);
        }

        double[] values = [.. variables.Select(variable => variable.SolutionValue())];
        GC.KeepAlive(solver);
        return StatusTranslation.Checked(model, outcome, values);
    }

    private static string NameOf(Backend backend) => backend switch
    {
        Backend.Scip => "SCIP",
        Backend.Cbc => "CBC",
        Backend.Highs => "HIGHS",
        _ => throw new ArgumentOutOfRangeException(nameof(backend), backend, "no such backend"),
    };
}
