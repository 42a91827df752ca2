using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>
/// Solves for a formula that balances in as many kitchens as the caller wishes. Of the sampled kitchens in which the last
/// formula found does not balance, those that it misses by least are asked for in the next solve, as rows with the facts of
/// that kitchen; the problem stays as linear as the plain one. How sure the formula is, is counted on all sampled kitchens.
/// </summary>
/// <param name="Solve">The plain solving.</param>
/// <param name="Bags">The kitchens.</param>
public sealed record SureSolve(FormulaSolve Solve, Bags Bags)
{
    /// <summary>Above what was wished by so much [1], so that kitchens which were not sampled keep the promise too.</summary>
    private const double Above = 0.01;

    /// <summary>Solves that are tried.</summary>
    private const int MostTries = 24;

    /// <summary>Share of the kitchens that a try asks for beyond those it has [1]; halved where that is too much at once.</summary>
    private const double FirstStep = 0.16;

    /// <summary>A smaller step is not worth a solve [1].</summary>
    private const double LeastStep = 0.02;

    /// <summary>Kitchens that are asked for anew at each try: the worst that is needed, and some between it and the mildest.</summary>
    private const int NewKitchens = 5;

    /// <summary>Solves a problem as its habits wish it.</summary>
    /// <param name="problem">What is to be found.</param>
    /// <param name="clock">Time that is left.</param>
    /// <param name="cancel">Stops the solve.</param>
    public FoundFormula Run(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var plain = Solve.Run(problem, clock, cancel);
        if (problem.Habits.Sureness is not { } wished || plain.Formula is null)
        {
            return plain;
        }

        var (found, _, isKept) = Surest(problem, plain, wished.Share, clock, cancel);
        return isKept
            ? found with { Plain = plain.Formula }
            : new FoundFormula(clock.IsOver ? Outcome.OutOfTime : Outcome.Infeasible, null, double.NaN);
    }

    /// <summary>Share of kitchens in which a formula balances.</summary>
    public double ChanceOf(FormulaProblem problem, Formula formula)
    {
        using var samples = SamplesOf(problem, formula);
        return samples.ChanceOfBalance(problem.Holds, problem.Reference, formula);
    }

    /// <summary>The first formula found that balances in as many kitchens as wished, or else in the most that were found.</summary>
    /// <param name="problem">What is to be found; without a wish for sureness it has the plain formula.</param>
    /// <param name="plain">The plain answer.</param>
    /// <param name="wished">Share of kitchens [1].</param>
    /// <param name="clock">Time that is left.</param>
    /// <param name="cancel">Stops the search.</param>
    public (FoundFormula Found, double Chance, bool IsKept) Surest(
        FormulaProblem problem, FoundFormula plain, double wished, Deadline clock, CancellationToken cancel)
    {
        var target = Math.Min(1, wished + Above);
        var best = Seen(problem, plain);
        // What the next try goes on from, and with which kitchens.
        var (from, kept, step) = (best, problem, FirstStep);
        for (var tries = 0; tries < MostTries && best.Chance < target && step >= LeastStep && !clock.IsOver; tries++)
        {
            var asked = kept with { Scenarios = kept.Scenarios.AddRange(Missed(problem, from, Math.Min(target, from.Chance + step), tries)) };
            var found = Solve.RunRounded(asked, clock, cancel);
            if (found.Formula is null)
            {
                // Too much at once: fewer of the kitchens that the surest formula misses.
                (from, step) = (best, step / 2);
                continue;
            }

            (from, kept) = (Seen(problem, found), asked);
            best = from.Chance > best.Chance ? from : best;
        }

        return (best.Found, best.Chance, best.Chance >= target);
    }

    private (FoundFormula Found, double[] Passed, double Chance) Seen(FormulaProblem problem, FoundFormula found)
    {
        var passed = Passed(problem, found.Formula!);
        return (found, passed, passed.Count(by => by <= 0) / (double)passed.Length);
    }

    /// <summary>By how much the worst reading of each kitchen passes its band.</summary>
    private double[] Passed(FormulaProblem problem, Formula formula)
    {
        using var samples = SamplesOf(problem, formula);
        var keeps = samples.Balances(problem.Holds, problem.Reference, formula);
        var worst = Enumerable.Repeat(double.NegativeInfinity, keeps.Length).ToArray();
        foreach (var hold in problem.Holds)
        {
            var passed = samples.Passed(hold, problem.Reference, formula);
            for (var kitchen = 0; kitchen < passed.Length; kitchen++)
            {
                worst[kitchen] = Math.Max(worst[kitchen], passed[kitchen]);
            }
        }

        // Whether a band is kept is said in one place only; how far it is missed only puts the kitchens in order.
        return [.. worst.Select((by, kitchen) => keeps[kitchen] ? Math.Min(by, 0) : Math.Max(by, double.Epsilon))];
    }

    private IEnumerable<Scenario> Missed(
        FormulaProblem problem, (FoundFormula Found, double[] Passed, double Chance) from, double target, int tries)
    {
        var (formula, passed) = (from.Found.Formula!, from.Passed);
        var inOrder = Enumerable.Range(0, passed.Length).OrderBy(kitchen => passed[kitchen]).ToArray();
        var first = Array.FindIndex(inOrder, kitchen => passed[kitchen] > 0);
        var last = (int)Math.Ceiling(target * passed.Length) - 1;
        var wanted = Enumerable.Range(1, NewKitchens).Select(part => inOrder[first + (int)((last - first) * (long)part / NewKitchens)]).Distinct();
        foreach (var kitchen in wanted)
        {
            FactSheet Draw(Ingredient ingredient) => Bags.Of(ingredient).In(kitchen);
            var holds = problem.Holds
                .Where(hold => hold.LeftOut is null)
                .Select(hold => hold with { Band = Scenario.BandOf(hold, problem.Reference, Draw) })
                .Where(hold => hold.Balance.Read(formula, problem.Reference, Draw) is { } level && hold.Band.Of(level) != Kitchen.Balances.Standing.Inside);
            yield return new Scenario($"kitchen_{tries}_{kitchen}", Draw, [.. holds]);
        }
    }

    private FactSamples SamplesOf(FormulaProblem problem, Formula formula) =>
        new(problem.Reference, formula, Bags);
}
