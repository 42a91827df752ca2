using System.Collections.Immutable;
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
    /// <summary>Measures the swapped formula by typical facts, by sums and no solve: what it gives answers the question, or finds the repair.</summary>
    /// <param name="search">The solving.</param>
    public MeasuredSwap Measure(AnswerSearch search)
    {
        var reference = Formula.Merged();
        var swapped = Swapped(reference);
        var holds = Holds(search, reference, Bags.First);
        var readings = Readings.Of(Readings.Told(search.Bakehouse.Balances.Ratios, holds), holds, swapped, reference, samples: null);
        return new MeasuredSwap(this, reference, swapped, holds, readings);
    }

    /// <summary>The formula with the swaps made as proposed. Something swapped for itself takes the grams given.</summary>
    internal Formula Swapped(Formula reference)
    {
        var lines = reference.Lines.Select(line => Left(line, reference)).Where(line => line.Grams > Grams.None).ToList();
        foreach (var swap in Swaps.Where(swap => swap.To is not null))
        {
            var grams = swap.Grams ?? swap.GoesOutOf(reference);
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

    /// <summary>What the swaps leave of a line.</summary>
    private Line Left(Line line, Formula reference) =>
        Swaps.FirstOrDefault(swap => swap.From.Equals(line.Ingredient)) is { } swap ? line with { Grams = line.Grams - swap.GoesOutOf(reference) } : line;

    /// <summary>What the swapped formula must keep: a swap is not blamed for what the reference does, as long as it makes
    /// nothing worse. Where the dose of an ingredient itself is asked about, leavening is held to its fixed band.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="reference">The formula as it was.</param>
    /// <param name="kitchens">How many kitchens the question looks at: what is known of the formula stands with what is known of it there.</param>
    internal ImmutableArray<Hold> Holds(AnswerSearch search, Formula reference, int kitchens)
    {
        var defaults = search.Bags.OfReference(reference, kitchens).Defaults(search.Bakehouse.Balances);
        var leftOut = Swaps
            .Where(swap => swap.Goes is null && Swaps.All(other => !swap.From.Equals(other.To)))
            .Select(swap => LeavingOut.BySwap(swap.From));
        var holds = HoldList.WithRoomForWater(HoldList.Around(defaults, reference, [.. leftOut, .. Wishes]), reference);
        return Swaps.Any(swap => swap.From.Equals(swap.To)) ? Measurement.StrictLeavening(search.Bakehouse.Balances, holds) : holds;
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
