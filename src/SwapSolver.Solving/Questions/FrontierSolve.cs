using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Finds single points of a trade-off: the best of one reading with a bound on the other, then the best of the
/// other at that, then, of all formulas with both, the one that changes least.</summary>
internal sealed class FrontierSolve(AnswerSearch search, FormulaProblem problem, TradedReading first, TradedReading second)
{
    private readonly BestReading best = new(search.Solver);

    /// <summary>The end of the curve where one reading is best; null where there is none, or the time ran out.</summary>
    public TradedFormula? End(TradedReading wanted, TradedReading other, Deadline clock, CancellationToken cancel) =>
        Point(problem, wanted, other, clock, cancel);

    /// <summary>The point with the best first reading whose second is a level or better; null where the time ran out.</summary>
    public TradedFormula? Beyond(double level, Deadline clock, CancellationToken cancel) =>
        Point(AtLeast(problem, second, level), first, second, clock, cancel);

    private TradedFormula? Point(
        FormulaProblem within, TradedReading wanted, TradedReading other, Deadline clock, CancellationToken cancel)
    {
        if (Best(within, wanted, clock, cancel) is not { } furthest)
        {
            return null;
        }

        var held = AtLeast(within, wanted, Read(wanted, furthest));
        if (Best(held, other, clock, cancel) is not { } formula)
        {
            return null;
        }

        var point = AtLeast(held, other, Read(other, formula));
        var used = formula.Lines.Select(line => line.Ingredient).ToHashSet();
        var least = new FormulaSolve(search.Solver).RunInSteps(
            point with { Candidates = [.. point.Candidates.Where(used.Contains)] }, clock, cancel);
        var chosen = least.Formula ?? formula;
        return new TradedFormula(chosen, Read(first, chosen), Read(second, chosen));
    }

    private Formula? Best(FormulaProblem within, TradedReading wanted, Deadline clock, CancellationToken cancel) =>
        best.Find(within, wanted.Balance, wanted.Better, clock, cancel) is (Outcome.Optimal, { } formula)
        && Recheck.Broken(within, formula).IsEmpty
            ? formula
            : null;

    private double Read(TradedReading reading, Formula formula) =>
        reading.Balance.Read(formula, problem.Reference, Draws.Typical)?.Value
        ?? throw new InvalidOperationException($"a formula of the trade-off has no {reading.Balance.Id}");

    private static FormulaProblem AtLeast(FormulaProblem within, TradedReading reading, double level)
    {
        var bound = reading.Better == Better.Lower ? new Band(null, new Level(level)) : new Band(new Level(level), null);
        return within with { Holds = within.Holds.Add(Targets.Of(reading.Balance, bound)) };
    }
}
