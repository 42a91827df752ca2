using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>A formula solved again to leave things out or to keep limits.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Wishes">What to leave out, and limits on readings.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record Variant(Formula Formula, ImmutableArray<Hold> Wishes, Habits Habits)
{
    /// <summary>Answers the question.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public Outcomes Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var strict = Problem(search.Bakehouse);
        var reference = strict.Reference;
        if (!Recheck.BrokenHolds(strict.Holds, reference, reference, Draws.Typical).Any())
        {
            var note = search.Bakehouse.Phrases.Say("note-unchanged");
            return new Outcomes([search.Explain(Formula, new Way(strict, 0, [note]), reference, isBestSoFar: false)], [], null, false);
        }

        var loose = strict with
        {
            Holds = HoldList.WithRoomForWater(strict.Holds, reference),
            LinesKeepTheirRoom = false,
        };
        var notes = AllowedInVain(search.Bakehouse.Phrases, strict);
        return search.Find(
            Formula,
            [new Way(strict, 0, notes), new Way(loose, Weights.RoomOutgrown, [search.Bakehouse.Phrases.Say("note-room-for-water"), .. notes])],
            clock,
            cancel);
    }

    /// <summary>That something was allowed which a wish keeps out: a food whose allergens nobody stated goes with every allergen.</summary>
    private ImmutableArray<string> AllowedInVain(Phrases phrases, FormulaProblem problem)
    {
        var names = Habits.Named.Where(problem.IsLeftOut).Select(ingredient => ingredient.Name).ToList();
        return names.Count == 0 ? [] : [phrases.Say("note-allowed-in-vain", ("ingredients", Phrases.List(names)))];
    }

    /// <summary>A loaf without sweetener is given none to keep a limit with.</summary>
    internal static Role[] SweetenerOf(Formula formula) =>
        formula.MassOf(Role.Sweetener) > Grams.None ? [Role.Sweetener] : [];

    /// <summary>The name of a variant says what it does without: a nut-free hazelnut loaf is not to be taken for the other.</summary>
    private string Named(Phrases phrases, Formula formula)
    {
        var without = Wishes.Where(wish => wish.LeftOut is not null).Select(wish => wish.Balance.Settings.Title).ToList();
        return without.Count == 0
            ? formula.DisplayName
            : phrases.Say("name-without", ("formula", formula.DisplayName), ("wishes", Phrases.List(without)));
    }

    /// <summary>The problem that this question is, put strictly.</summary>
    public FormulaProblem Problem(Bakehouse bakehouse)
    {
        var merged = Formula.InOrderOfIds();
        var reference = merged with { DisplayName = Named(bakehouse.Phrases, merged) };
        var holds = HoldList.Around(bakehouse.Balances, reference, Wishes);
        var limits = Wishes.Any(wish => wish.LeftOut is null);
        Role[] further = limits ? [Role.Flour, Role.Liquid, Role.Gel, .. SweetenerOf(reference)] : [];
        return new FormulaProblem(
            reference,
            reference,
            holds,
            bakehouse.Balances.Anchored,
            bakehouse.Balances.NetCarbohydrate,
            new Candidates(bakehouse) { Named = Habits.Named }.For(reference, holds, further),
            Habits,
            bakehouse.Practice);
    }
}
