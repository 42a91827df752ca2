using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>From a problem to grams that a baker can weigh: solve, round to the scale, check the printed grams; where
/// rounding breaks a band, solve again with every line in steps of the scale.</summary>
/// <param name="Solver">The solver.</param>
public sealed record FormulaSolve(ISolver Solver)
{
    /// <summary>Solves a problem.</summary>
    /// <param name="problem">What is to be found.</param>
    /// <param name="clock">Time that is left.</param>
    /// <param name="cancel">Stops the solve.</param>
    public FoundFormula Run(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var rounded = RunOnce(problem, wholeSteps: false, clock, cancel);
        if (rounded.Formula is not { } formula || Recheck.Broken(problem, formula).IsEmpty)
        {
            return rounded;
        }

        // The same ingredients first, which is quick; then anything, which is exact.
        var used = formula.Lines.Select(line => line.Ingredient).ToHashSet();
        var same = problem with { Candidates = [.. problem.Candidates.Where(used.Contains)], Found = [] };
        foreach (var narrowed in new[] { same, problem })
        {
            var stepped = RunOnce(narrowed, wholeSteps: true, clock, cancel);
            if (stepped.Formula is { } found && Recheck.Broken(problem, found).IsEmpty)
            {
                return stepped;
            }

            if (stepped.Outcome == Outcome.OutOfTime)
            {
                return stepped;
            }
        }

        return new FoundFormula(Outcome.Infeasible, null, double.NaN);
    }

    /// <summary>Whether any formula keeps every hold, in any amount: the question that conflicts are sought with.</summary>
    public Outcome CanBeMet(FormulaProblem problem, Deadline clock, CancellationToken cancel) =>
        Solver.Solve(FormulaModel.Build(problem, wholeSteps: false).Model, clock.Left, cancel).Outcome;

    private FoundFormula RunOnce(FormulaProblem problem, bool wholeSteps, Deadline clock, CancellationToken cancel)
    {
        var model = FormulaModel.Build(problem, wholeSteps);
        var solution = Solver.Solve(model.Model, clock.Left, cancel);
        return new FoundFormula(
            solution.Outcome, solution.HasPoint ? model.At(problem, solution.Values) : null, solution.Objective);
    }
}

/// <summary>What a solve found.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Formula">The formula; null where there is none.</param>
/// <param name="Objective">What the formula counts by the <see cref="Weights"/>; NaN where there is none.</param>
public sealed record FoundFormula(Outcome Outcome, Formula? Formula, double Objective);

/// <summary>Time that is left for a question.</summary>
/// <param name="Time">The clock.</param>
/// <param name="End">When it must be answered.</param>
public sealed record Deadline(TimeProvider Time, DateTimeOffset End)
{
    /// <summary>Time left; never below a millisecond, so that a native limit is always a limit.</summary>
    public TimeSpan Left
    {
        get
        {
            var left = End - Time.GetUtcNow();
            return left > TimeSpan.FromMilliseconds(1) ? left : TimeSpan.FromMilliseconds(1);
        }
    }

    /// <summary>Whether the time is over.</summary>
    public bool IsOver => Time.GetUtcNow() >= End;
}
