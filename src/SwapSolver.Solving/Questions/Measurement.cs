using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Where a formula stands by itself.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Measured">What lines may weigh that were not weighed; null where all were.</param>
public sealed record Measurement(Formula Formula, MeasuredLines? Measured = null)
{
    /// <summary>The formula around whose readings the bands are laid; null for the formula's own.</summary>
    public Formula? BandsOf { get; init; }

    /// <summary>Reads every balance, and seeks a repair where a fixed band is missed.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public MeasuredFormula Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        var reference = Formula.Merged();
        var holds = HoldsOf(bakehouse, reference);
        var readings = Read(search);
        var unread = bakehouse.Balances.Ratios.Where(balance => !balance.CanRead(reference)).ToImmutableArray();
        var repair = unread.IsEmpty && IsMissed(bakehouse, reference, holds, readings)
            ? search.Best(Formula, [new Way(Repair(bakehouse, reference, holds), 0, [])], clock, cancel)
            : (null, false);
        return new MeasuredFormula(
            readings, [.. new CautionList(bakehouse).Of(Formula), .. unread.Select(balance => new CautionList(bakehouse).Unread(balance, reference))], repair.Answer, repair.EndedEarly);
    }

    /// <summary>Every reading against its band, without seeking a repair.</summary>
    /// <param name="search">The solving.</param>
    public ImmutableArray<Reading> Read(AnswerSearch search)
    {
        var reference = Formula.Merged();
        using var samples = new FactSamples(reference.Lines.Select(line => line.Ingredient), Measured, search.Bags);
        return Readings.Of(search.Bakehouse.Balances.ToldOf(reference), HoldsOf(search.Bakehouse, Origin(reference)), reference, reference, samples);
    }

    /// <summary>Every reading against its band with typical facts alone: no kitchens are drawn, so a reading has no range.</summary>
    /// <param name="search">The solving.</param>
    public ImmutableArray<Reading> ReadTypical(AnswerSearch search)
    {
        var reference = Formula.Merged();
        return Readings.Of(search.Bakehouse.Balances.ToldOf(reference), HoldsOf(search.Bakehouse, Origin(reference)), reference, reference, samples: null);
    }

    private Formula Origin(Formula reference) => BandsOf?.Merged() ?? reference;

    /// <summary>Whether a band of the formula's own is missed, whatever others it is held against.</summary>
    private bool IsMissed(Bakehouse bakehouse, Formula reference, ImmutableArray<Hold> holds, ImmutableArray<Reading> readings) =>
        (BandsOf is null ? readings : Readings.Of(bakehouse.Balances.Ratios, holds, reference, reference, samples: null))
            .Any(reading => reading.Standing != Standing.Inside);

    private static ImmutableArray<Hold> HoldsOf(Bakehouse bakehouse, Formula reference) =>
        StrictLeavening(bakehouse.Balances, HoldList.Around(bakehouse.Balances, reference, []));

    /// <summary>The holds with leavening held to its fixed band: judged by itself, a loaf that leaves soda over is not
    /// excused by having done so before.</summary>
    public static ImmutableArray<Hold> StrictLeavening(BalanceList balances, ImmutableArray<Hold> holds) =>
    [
        .. holds.Where(hold => hold.Balance != balances.Leavening),
        new Hold(balances.Leavening.Id, balances.Leavening, balances.Leavening.Settings.Fixed, FromCaller: false),
    ];

    private static FormulaProblem Repair(Bakehouse bakehouse, Formula reference, ImmutableArray<Hold> holds)
    {
        var flours = reference.MassOf(Role.Flour);
        var batter = reference.BatterMass;
        Grams Borne(Line line) => new(Math.Min(line.Grams.Value, line.Ingredient.Usage.Most(flours, batter).Value));
        var bases = reference.Lines.Where(line => line.Ingredient.Typical[Fact.Base] > 0).ToList();
        var isAboveUsage = bases.Any(line => line.Grams > Borne(line));
        var mostGas = new Level(bases.Sum(line => line.Ingredient.Typical[Fact.Base] * Borne(line).Value) / batter.Value);
        return new FormulaProblem(
            reference,
            reference,
            [.. holds.Select(hold => isAboveUsage && hold.Balance is Gas ? AsMuchAsIsBorne(hold, reference, mostGas) : hold)],
            bakehouse.Balances.Anchored,
            bakehouse.Balances.NetCarbohydrate,
            new Candidates(bakehouse).For(reference, holds, Role.Acid, Role.Liquid),
            Habits.Usual,
            bakehouse.Practice)
        {
            UsageBinds = isAboveUsage,
        };
    }

    /// <summary>More soda than any loaf bears says nothing of how much gas the loaf should have: between half of what it
    /// bears and all of it then.</summary>
    private static Hold AsMuchAsIsBorne(Hold gas, Formula reference, Level most) =>
        gas.Balance.Read(reference, reference, Draws.Typical) is { } own && own.Value > most.Value
            ? gas with { Band = new Band(new Level(most.Value / 2), most), IsAnchored = false }
            : gas;
}
