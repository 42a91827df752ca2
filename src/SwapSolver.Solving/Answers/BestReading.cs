using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>Finds how far a reading goes within a problem, on the scale's own grid.</summary>
/// <param name="Solver">The solver.</param>
internal sealed record BestReading(ISolver Solver)
{
    /// <summary>Steps after which a ratio's best has long been found: each at least halves what is left, and most take three.</summary>
    private const int MostSteps = 12;

    /// <summary>The formula whose reading is best.</summary>
    /// <param name="problem">What it must keep.</param>
    /// <param name="balance">The rule.</param>
    /// <param name="better">The way that is better.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public (Outcome Outcome, Formula? Formula) Find(
        FormulaProblem problem, Balance balance, Better better, Deadline clock, CancellationToken cancel)
    {
        var model = FormulaModel.Build(problem with { Anchors = [] }, wholeSteps: true);
        var objective = new ReadingObjective(balance, better, problem.Reference);
        var isSum = objective.IsSum(model);
        Formula? best = null;
        var level = balance.Read(problem.Reference, problem.Reference, Draws.Typical) ?? new Level(0);
        for (var step = 0; step < MostSteps; step++)
        {
            var solution = Solver.Solve(best is null ? objective.In(model, level) : objective.Beyond(model, level), clock.Left, cancel);
            if (best is not null && solution.Outcome == Outcome.Infeasible)
            {
                return (Outcome.Optimal, best);
            }

            if (solution.Outcome != Outcome.Optimal)
            {
                return (solution.Outcome, best);
            }

            var found = model.At(problem, solution.Values);
            if (balance.Read(found, problem.Reference, Draws.Typical) is not { } reached)
            {
                return (Outcome.Optimal, best);
            }

            var gain = (reached.Value - level.Value) * (better == Better.Lower ? -1 : 1);
            if (best is not null && gain <= 1e-9 * Math.Abs(level.Value))
            {
                return (Outcome.Optimal, best);
            }

            best = found;
            level = reached;
            if (isSum)
            {
                return (Outcome.Optimal, best);
            }
        }

        return (Outcome.Optimal, best);
    }
}
