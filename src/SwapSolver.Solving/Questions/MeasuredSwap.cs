using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>A formula with the proposed swaps made, as it reads: a verdict where it balances, else what a repair starts from.</summary>
/// <param name="Check">The swaps.</param>
/// <param name="Reference">The formula as it was.</param>
/// <param name="Swapped">With the swaps.</param>
/// <param name="Holds">What it must keep.</param>
/// <param name="Readings">Its readings by typical facts, without ranges: the verdict hangs on no more.</param>
public sealed record MeasuredSwap(SwapCheck Check, Formula Reference, Formula Swapped, ImmutableArray<Hold> Holds, ImmutableArray<Reading> Readings)
{
    /// <summary>How far beyond an even chance some kitchens leave no doubt of one: so many standard errors of a share that is even.</summary>
    private const double BeyondDoubt = 5;

    /// <summary>Whether every reading lies in its band.</summary>
    public bool Balances => Readings.All(static reading => reading.Standing == Standing.Inside);

    /// <summary>The verdict on one that balances.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="withRanges">Whether its readings are told with their ranges; to be asked where the readings are told at all.</param>
    /// <exception cref="InvalidOperationException">It does not balance.</exception>
    public SwapVerdict Yes(AnswerSearch search, bool withRanges = true)
    {
        if (!Balances)
        {
            throw new InvalidOperationException("a swap that does not balance is no yes");
        }

        using var samples = new FactSamples(Reference, Swapped, search.Bags, withRanges ? Bags.First : Bags.Few);
        var words = Words(search).Yes(Chance(samples, search.Bags), Rise(search, Swapped));
        return new SwapVerdict(Verdict.Balances, Swapped, withRanges ? Ranged(samples) : Readings, null, [], words, Cautions(search, Swapped), [], EndedEarly: false);
    }

    /// <summary>The verdict on one that does not: with the best repair there is.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public SwapVerdict Repaired(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        using var samples = new FactSamples(Reference, Swapped, search.Bags, Bags.First);
        var readings = Ranged(samples);
        var words = Words(search);
        var missed = readings.Where(reading => reading.Standing != Standing.Inside).ToImmutableArray();
        // A repair of the leavening aims at the fixed band, not at what the reference left over.
        var aim = missed.Any(reading => reading.Balance == bakehouse.Balances.Leavening)
            ? Measurement.StrictLeavening(bakehouse.Balances, Holds)
            : Holds;
        var repairs = new SwapRepairs(bakehouse, Reference, Swapped, Check.Swaps, aim, Check.Habits);
        var reasons = words.Reasons(missed);
        var kept = search.Best(Check.Formula, repairs.WithThisDose(), clock, cancel);
        if (kept.Answer is { } repair && !Check.PutsBackWhatWasLeftOut(repair.Formula, Swapped))
        {
            return new SwapVerdict(
                Verdict.BalancesWithRepair,
                Swapped,
                readings,
                repair,
                reasons,
                words.YesIf(repair, Rise(search, repair.Formula)),
                Cautions(search, repair.Formula),
                [],
                kept.EndedEarly);
        }

        var instead = search.Best(Check.Formula, repairs.WithAnyDose(), clock, cancel);
        var none = instead.Answer is null && !instead.EndedEarly
            ? search.Find(Check.Formula, repairs.WithAnyDose()[^1..], clock, cancel)
            : null;
        return new SwapVerdict(
            Verdict.DoesNotBalance,
            Swapped,
            readings,
            instead.Answer,
            reasons,
            words.No(reasons, instead.Answer),
            Cautions(search, instead.Answer?.Formula ?? Swapped),
            none?.Conflict ?? [],
            kept.EndedEarly || instead.EndedEarly || none?.EndedEarly == true);
    }

    /// <summary>The readings, each with its range over kitchens.</summary>
    private ImmutableArray<Reading> Ranged(FactSamples samples) =>
    [
        .. Readings.Select(reading =>
        {
            var (low, high) = samples.SpreadOf(reading.Balance, Swapped, Reference);
            return reading with { Low = low, High = high };
        }),
    ];

    /// <summary>The chance that it balances, 0 to 1, as near as it is told: that it is even or better by some kitchens where they leave
    /// no doubt of it, how small it is by all.</summary>
    private double Chance(FactSamples some, Bags drawn)
    {
        var inSome = some.ChanceOfBalance(Holds, Reference, Swapped);
        var standardError = Math.Sqrt(SwapWords.EvenChance * (1 - SwapWords.EvenChance) / some.Kitchens);
        if (inSome >= SwapWords.EvenChance + (BeyondDoubt * standardError))
        {
            return inSome;
        }

        using var all = new FactSamples(Reference, Swapped, drawn);
        return all.ChanceOfBalance(Holds, Reference, Swapped);
    }

    private SwapWords Words(AnswerSearch search) => new(search.Bakehouse.Phrases, Check.Swaps);

    private string Rise(AnswerSearch search, Formula formula) =>
        new CautionList(search.Bakehouse).NetCarbohydrateRise(Reference, formula) ?? string.Empty;

    private ImmutableArray<string> Cautions(AnswerSearch search, Formula formula) => new CautionList(search.Bakehouse).Of(Reference, formula, []);
}
