using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Whether swaps that a reader proposes would balance.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Swaps">The swaps, made together; each names an ingredient of the formula.</param>
/// <param name="Wishes">Limits on readings that the swapped formula must keep besides.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record SwapCheck(Formula Formula, ImmutableArray<Swap> Swaps, ImmutableArray<Hold> Wishes, Habits Habits)
{
    /// <summary>Answers the question.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public SwapVerdict Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        var reference = Formula.Merged();
        var swapped = Swapped(reference);
        var holds = Holds(bakehouse.Balances, reference);
        using var samples = new FactSamples(reference, swapped, search.Bags);
        var held = holds.Select(hold => hold.Balance).Where(balance => balance is not LeftOut);
        var readings = Readings.Of(bakehouse.Balances.Ratios.Union(held), holds, swapped, reference, samples);
        var words = new SwapWords(bakehouse.Phrases, Swaps);
        var list = new CautionList(bakehouse);
        string Rise(Formula formula) => list.NetCarbohydrateRise(reference, formula) ?? string.Empty;
        ImmutableArray<string> Cautions(Formula formula) => list.Of(reference, formula, []);
        var chance = samples.ChanceOfBalance(holds, reference, swapped);
        var missed = readings.Where(reading => reading.Standing != Standing.Inside).ToImmutableArray();
        if (missed.IsEmpty)
        {
            return new SwapVerdict(
                Verdict.Balances, swapped, readings, null, [], words.Yes(chance, Rise(swapped)), Cautions(swapped), [], EndedEarly: false);
        }

        // A repair of the leavening aims at the fixed band, not at what the reference left over.
        var aim = missed.Any(reading => reading.Balance == bakehouse.Balances.Leavening)
            ? Measurement.StrictLeavening(bakehouse.Balances, holds)
            : holds;
        var repairs = new SwapRepairs(bakehouse, reference, swapped, Swaps, aim, Habits);
        var reasons = words.Reasons(missed);
        var kept = search.Best(Formula, repairs.WithThisDose(), clock, cancel);
        if (kept.Answer is { } repair && !PutsBackWhatWasLeftOut(repair.Formula, swapped))
        {
            return new SwapVerdict(
                Verdict.BalancesWithRepair, swapped, readings, repair, reasons, words.YesIf(repair, Rise(repair.Formula)), Cautions(repair.Formula), [], kept.EndedEarly);
        }

        var instead = search.Best(Formula, repairs.WithAnyDose(), clock, cancel);
        var none = instead.Answer is null && !instead.EndedEarly
            ? search.Find(Formula, repairs.WithAnyDose()[^1..], clock, cancel)
            : null;
        return new SwapVerdict(
            Verdict.DoesNotBalance,
            swapped,
            readings,
            instead.Answer,
            reasons,
            words.No(reasons, instead.Answer),
            Cautions(instead.Answer?.Formula ?? swapped),
            none?.Conflict ?? [],
            kept.EndedEarly || instead.EndedEarly || none?.EndedEarly == true);
    }

    /// <summary>The formula with the swaps made as proposed. Something swapped for itself takes the grams given.</summary>
    internal Formula Swapped(Formula reference)
    {
        var lines = reference.Lines.Where(line => Swaps.All(swap => !swap.From.Equals(line.Ingredient))).ToList();
        foreach (var swap in Swaps.Where(swap => swap.To is not null))
        {
            var grams = swap.Grams ?? reference.MassOf(swap.From);
            var there = lines.FindIndex(line => line.Ingredient.Equals(swap.To));
            if (there >= 0)
            {
                lines[there] = lines[there] with { Grams = lines[there].Grams + grams };
            }
            else if (grams > Grams.None)
            {
                lines.Add(new Line(swap.To!, grams));
            }
        }

        return reference with { Lines = [.. lines] };
    }

    /// <summary>What the swapped formula must keep: a swap is not blamed for what the reference does, as long as it makes
    /// nothing worse. Where the dose of an ingredient itself is asked about, leavening is held to its fixed band.</summary>
    internal ImmutableArray<Hold> Holds(BalanceList balances, Formula reference)
    {
        var leftOut = Swaps
            .Where(swap => Swaps.All(other => !swap.From.Equals(other.To)))
            .Select(swap => LeavingOut.BySwap(swap.From));
        var holds = HoldList.WithRoomForWater(HoldList.Around(balances, reference, [.. leftOut, .. Wishes]), reference);
        return Swaps.Any(swap => swap.From.Equals(swap.To)) ? Measurement.StrictLeavening(balances, holds) : holds;
    }

    /// <summary>Whether something was to be left out, and the repair brings the same back by way of another line: that is
    /// a replacement, and the answer to 'can I leave it out' is no.</summary>
    internal bool PutsBackWhatWasLeftOut(Formula repair, Formula swapped) =>
        Swaps.Any(swap => swap.To is null)
        && repair.Lines.Any(line =>
            line.Grams > swapped.MassOf(line.Ingredient)
            && Swaps.Any(swap => swap.To is null && Leavens(swap.From) && Leavens(line.Ingredient)));

    private static bool Leavens(Ingredient ingredient) => ingredient.Role is Role.Acid or Role.Base or Role.LeaveningBlend;
}
