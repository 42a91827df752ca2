using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Where a formula stands by itself.</summary>
/// <param name="Formula">The formula.</param>
public sealed record Measurement(Formula Formula)
{
    /// <summary>Reads every balance, and seeks a repair where a fixed band is missed.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public MeasuredFormula Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        var reference = Formula.Merged();
        var holds = StrictLeavening(bakehouse.Balances, HoldList.Around(bakehouse.Balances, reference, []));
        var samples = new FactSamples(reference.Lines.Select(line => line.Ingredient));
        var readings = Readings.Of(bakehouse.Balances.Ratios, holds, reference, reference, samples);
        var repair = readings.Any(reading => reading.Standing != Standing.Inside)
            ? search.Best(Formula, [new Way(Repair(bakehouse, reference, holds), 0, [])], clock, cancel)
            : (null, false);
        return new MeasuredFormula(
            readings, new CautionList(bakehouse).Of(Formula), repair.Answer, repair.EndedEarly);
    }

    /// <summary>The holds with leavening held to its fixed band: judged by itself, a loaf that leaves soda over is not
    /// excused by having done so before.</summary>
    public static ImmutableArray<Hold> StrictLeavening(BalanceList balances, ImmutableArray<Hold> holds) =>
    [
        .. holds.Where(hold => hold.Balance != balances.Leavening),
        new Hold(balances.Leavening.Id, balances.Leavening, balances.Leavening.Settings.Fixed, FromCaller: false),
    ];

    private static FormulaProblem Repair(Bakehouse bakehouse, Formula reference, ImmutableArray<Hold> holds)
    {
        // So much soda that no loaf bears it says nothing of how much gas the loaf should have.
        var isAboveUsage = reference.Lines.Any(line => line.Ingredient.Typical[Fact.Base] > 0
            && line.Grams > line.Ingredient.Usage.Most(reference.MassOf(Role.Flour), reference.BatterMass));
        return new FormulaProblem(
            reference,
            reference,
            isAboveUsage ? holds.RemoveAll(hold => hold.Balance is Gas) : holds,
            bakehouse.Balances.Anchored,
            bakehouse.Balances.NetCarbohydrate,
            new Candidates(bakehouse).For(reference, holds, Role.Acid, Role.Liquid),
            Habits.Usual,
            bakehouse.Practice)
        {
            UsageBinds = isAboveUsage,
        };
    }
}
