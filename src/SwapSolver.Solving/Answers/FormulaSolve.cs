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

    /// <summary>Solves a problem with every line in steps of the scale from the start, as it must be where the holds leave no
    /// room for rounding.</summary>
    public FoundFormula RunInSteps(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var found = RunOnce(problem, wholeSteps: true, clock, cancel);
        return found.Formula is { } formula && !Recheck.Broken(problem, formula).IsEmpty ? new FoundFormula(Outcome.Infeasible, null, double.NaN) : found;
    }

    /// <summary>Solves a problem in any amounts and rounds to the scale; a formula whose printed grams break what was asked is
    /// none. Quicker than <see cref="Run"/>, which then looks further.</summary>
    /// <param name="problem">What is to be found; the kitchens that it names besides are not held against the printed grams.</param>
    /// <param name="clock">Time that is left.</param>
    /// <param name="cancel">Stops the solve.</param>
    public FoundFormula RunRounded(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var found = RunOnce(problem, wholeSteps: false, clock, cancel);
        return found.Formula is not { } formula || Recheck.Broken(problem, formula).IsEmpty
            ? found
            : new FoundFormula(Outcome.Infeasible, null, double.NaN);
    }

    /// <summary>Whether any formula keeps every hold, in any amount: the question that conflicts are sought with.</summary>
    public Outcome CanBeMet(FormulaProblem problem, Deadline clock, CancellationToken cancel) =>
        Solver.Solve(FormulaModel.Build(problem, wholeSteps: false).Model, clock.Left, cancel).Outcome;

    private FoundFormula RunOnce(FormulaProblem problem, bool wholeSteps, Deadline clock, CancellationToken cancel)
    {
        var model = FormulaModel.Build(problem, wholeSteps);
        var solution = Solver.Solve(model.Model, clock.Left, cancel);
        return new FoundFormula(
            solution.Outcome, solution.HasPoint ? model.At(problem, solution.Values) : null, solution.Objective)
        {
            Point = solution.HasPoint && !wholeSteps ? (model, solution.Values) : null,
        };
    }
}
