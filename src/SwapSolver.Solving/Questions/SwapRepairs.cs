using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>The problems whose answers would save a proposed swap.</summary>
internal sealed class SwapRepairs(
    Bakehouse bakehouse,
    Formula reference,
    Formula swapped,
    ImmutableArray<Swap> swaps,
    ImmutableArray<Hold> holds,
    Habits habits)
{
    private const string Water = "water";

    /// <summary>The proposed dose stays; only the other lines move, and water may come in.</summary>
    public ImmutableArray<Way> WithThisDose()
    {
        var doses = swaps
            .Select(swap => swap.To)
            .OfType<Ingredient>()
            .Distinct()
            .Where(ingredient => swapped.MassOf(ingredient) > Grams.None)
            .ToImmutableDictionary(ingredient => ingredient, swapped.MassOf);
        var water = bakehouse.Pantry.TryGet(Water, out var found) && swapped.MassOf(found) == Grams.None
            && !holds.Any(hold => hold.LeftOut is { } rule && rule.Carries(found))
            ? ImmutableArray.Create(found)
            : [];
        var strict = Problem(swapped, water) with { Fixed = doses, Habits = habits with { NewIngredients = 1 } };
        return [new Way(strict, 0, []), new Way(strict with { LinesKeepTheirRoom = false }, Weights.RoomOutgrown, [])];
    }

    /// <summary>The dose is free: what was asked to come in does the work alone if it can; else anything that does it.</summary>
    public ImmutableArray<Way> WithAnyDose()
    {
        var candidates = new Candidates(bakehouse.Pantry, bakehouse.Balances.NetCarbohydrate)
            .For(reference, holds, Role.Acid, Role.Liquid);
        var wanted = swaps
            .Select(swap => swap.To)
            .OfType<Ingredient>()
            .Where(ingredient => reference.MassOf(ingredient) == Grams.None)
            .ToImmutableHashSet();
        var asked = Problem(reference, [.. wanted]) with
        {
            LinesKeepTheirRoom = false,
            Required = wanted,
            Habits = habits with { NewIngredients = Math.Max(wanted.Count, habits.NewIngredients) },
        };
        var free = Problem(reference, candidates) with { LinesKeepTheirRoom = false };
        return wanted.IsEmpty
            ? [new Way(free, 0, [])]
            : [new Way(asked, 0, []), new Way(free, Weights.OtherThanAsked, [])];
    }

    private FormulaProblem Problem(Formula start, ImmutableArray<Ingredient> candidates) => new(
        reference,
        start,
        holds,
        bakehouse.Balances.Anchored,
        bakehouse.Balances.NetCarbohydrate,
        candidates,
        habits);
}
