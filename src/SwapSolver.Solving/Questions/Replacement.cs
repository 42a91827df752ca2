using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Replacing;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>One ingredient replaced. An acid, a base or a powder is replaced at equal millimoles; anything else by solving the formula again.</summary>
/// <param name="Formula">The formula, which holds the ingredient; null for a dose of leavening by itself.</param>
/// <param name="From">What goes out.</param>
/// <param name="Dose">How much of it there is, where there is no formula [g]; else not read.</param>
/// <param name="Stock">How much of it is at hand and stays [g]; 0 where none is.</param>
/// <param name="With">What is to come in; empty for whatever can.</param>
/// <param name="Wishes">Limits on readings.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record Replacement(
    Formula? Formula,
    Ingredient From,
    Grams Dose,
    Grams Stock,
    ImmutableArray<Ingredient> With,
    ImmutableArray<Hold> Wishes,
    Habits Habits)
{
    /// <summary>Answers of which a formula is told in full where nobody says how many: more would not be read.</summary>
    public const int UsualOfLeavening = 5;

    /// <summary>Most answers where leavening is replaced; null for the usual few in a formula, and for all doses without one.</summary>
    public int? MostOfLeavening { get; init; }

    /// <summary>Answers the question.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="InvalidOperationException">There is neither a formula nor leavening.</exception>
    public Outcomes Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        if (LeaveningKits.Leavens(From) && (With.IsEmpty || LeaveningKits.CanStandIn(From, With)))
        {
            return Leavening(search);
        }

        var formula = Formula ?? throw new InvalidOperationException($"{From.Id} is replaced within a formula only");
        var variant = new Variant(formula, [LeavingOut.BySwap(From), .. Wishes], Habits);
        return With.IsEmpty ? variant.Answer(search, clock, cancel) : search.Find(formula, [Asked(search.Bakehouse, variant)], clock, cancel);
    }

    private Outcomes Leavening(AnswerSearch search)
    {
        var dose = Formula?.MassOf(From) ?? Dose;
        var replacing = new LeaveningReplacement(search.Bakehouse, search.Bags, Wishes, Habits);
        if (Stock >= dose && Formula is { } formula)
        {
            var reference = formula.Merged();
            var holds = HoldList.Around(search.Bakehouse.Balances, reference, Wishes);
            var problem = new FormulaProblem(
                reference, reference, holds, [], search.Bakehouse.Balances.NetCarbohydrate, [], Habits, search.Bakehouse.Practice);
            var note = search.Bakehouse.Phrases.Say("replace-nothing");
            return new Outcomes([search.Explain(formula, new Way(problem, 0, [note]), reference, isBestSoFar: false)], [], null, false);
        }

        return replacing.Answer(Formula, From, dose, Stock < dose ? Stock : Grams.None, With, MostOfLeavening ?? (Formula is null ? int.MaxValue : UsualOfLeavening));
    }

    /// <summary>The problem of what is asked for: nothing else comes in.</summary>
    private Way Asked(Bakehouse bakehouse, Variant variant)
    {
        var problem = variant.Problem(bakehouse);
        var reference = problem.Reference;
        var wanted = With.Where(one => reference.MassOf(one) == Grams.None).ToImmutableHashSet();
        return new Way(
            problem with
            {
                Holds = HoldList.WithRoomForWater(problem.Holds, reference),
                LinesKeepTheirRoom = false,
                Candidates = [.. wanted],
                Required = wanted,
                Habits = Habits with { NewIngredients = wanted.Count },
            },
            0,
            []);
    }
}
