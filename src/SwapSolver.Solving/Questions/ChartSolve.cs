using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Judges one pair of a chart, by the same rules as a check: gram for gram first, then in any dose and with the
/// other lines corrected. It asks for no more than the verdict needs.</summary>
/// <param name="search">The solving.</param>
/// <param name="formula">The formula.</param>
/// <param name="habits">How the kitchen wants its answers.</param>
internal sealed class ChartSolve(AnswerSearch search, Formula formula, Habits habits)
{
    private readonly Formula reference = formula.Merged();

    /// <summary>The verdict on a pair; null where the time ran out.</summary>
    public ChartedSwap? Judge(ChartPair pair, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        var check = new SwapCheck(formula, [new Swap(pair.From, pair.To, null)], [], habits);
        var swapped = check.Swapped(reference);
        var holds = check.Holds(search, reference, Bags.Kitchens);
        var broken = Recheck.BrokenHolds(holds, reference, swapped, Draws.Typical).Select(hold => hold.Balance).Distinct().ToList();
        if (broken.Count == 0)
        {
            var asItIs = bakehouse.Phrases.Say(pair.To is null ? "chart-left-out" : "chart-same-weight");
            return Told(pair, Verdict.Balances, holds, swapped, [], asItIs);
        }

        var words = new SwapWords(bakehouse.Phrases, check.Swaps);
        var missed = words.Reasons(ReadingsOf(broken, holds, swapped))[0];
        // A repair of the leavening aims at the fixed band, as in a check.
        var aim = broken.Contains(bakehouse.Balances.Leavening) ? Measurement.StrictLeavening(bakehouse.Balances, holds) : holds;
        var repairs = new SwapRepairs(bakehouse, reference, swapped, check.Swaps, aim, habits);
        // The dose that does it by itself first; then the same weight, which a reader may insist on.
        foreach (var way in pair.To is null ? repairs.WithThisDose() : [repairs.WithAnyDose()[0], .. repairs.WithThisDose()])
        {
            var found = new FormulaSolve(search.Solver).Run(way.Problem, clock, cancel);
            if (found.Outcome == Outcome.OutOfTime)
            {
                return null;
            }

            if (found.Formula is { } repaired && !check.PutsBackWhatWasLeftOut(repaired, swapped))
            {
                return Repaired(pair, way.Problem, repaired, words, missed);
            }
        }

        return new ChartedSwap(
            pair,
            Verdict.DoesNotBalance,
            null,
            ChanceOf(holds, swapped),
            [],
            bakehouse.Phrases.Say(pair.To is null ? "chart-not-left-out" : "chart-no", ("missed", missed)),
            CautionsOf(pair, swapped));
    }

    private ChartedSwap Repaired(ChartPair pair, FormulaProblem problem, Formula repaired, SwapWords words, string missed)
    {
        var changes = new Explanation(search.Bakehouse.Phrases).Changes(formula, problem with { Start = reference }, repaired);
        ImmutableArray<Change> besides = [.. changes.Where(change => !change.Ingredient.Equals(pair.From) && !change.Ingredient.Equals(pair.To))];
        return besides.IsEmpty
            ? Told(pair, Verdict.Balances, problem.Holds, repaired, [], search.Bakehouse.Phrases.Say("chart-dose", ("missed", missed)))
            : Told(
                pair,
                Verdict.BalancesWithRepair,
                problem.Holds,
                repaired,
                besides,
                search.Bakehouse.Phrases.Say("chart-repair", ("changes", words.Changes(besides, apartFromSwap: true))));
    }

    private ImmutableArray<string> CautionsOf(ChartPair pair, Formula bowl)
    {
        var list = new CautionList(search.Bakehouse);
        return [.. list.OfTheChange(reference, bowl), .. pair.To is { } to ? list.Of(to) : []];
    }

    private double ChanceOf(ImmutableArray<Hold> holds, Formula bowl)
    {
        using var samples = SamplesOf(bowl);
        return samples.ChanceOfBalance(holds, reference, bowl);
    }

    private ImmutableArray<Reading> ReadingsOf(IEnumerable<Balance> balances, ImmutableArray<Hold> holds, Formula bowl)
    {
        using var samples = SamplesOf(bowl);
        return Readings.Of(balances, holds, bowl, reference, samples);
    }

    private FactSamples SamplesOf(Formula bowl) => new(reference, bowl, search.Bags);

    private ChartedSwap Told(
        ChartPair pair, Verdict verdict, ImmutableArray<Hold> holds, Formula bowl, ImmutableArray<Change> besides, string reason) => new(
        pair,
        verdict,
        pair.To is { } to ? bowl.MassOf(to) : Grams.None,
        ChanceOf(holds, bowl),
        besides,
        reason,
        CautionsOf(pair, bowl));
}
