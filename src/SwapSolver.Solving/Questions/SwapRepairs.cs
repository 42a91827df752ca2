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
    /// <summary>The proposed dose stays; only the other lines move, and water may come in.</summary>
    public ImmutableArray<Way> WithThisDose()
    {
        var doses = swaps
            .Select(swap => swap.To)
            .OfType<Ingredient>()
            .Distinct()
            .Where(ingredient => swapped.MassOf(ingredient) > Grams.None)
            .ToImmutableDictionary(ingredient => ingredient, swapped.MassOf)
            .SetItems(StayingInPart);
        var water = new Candidates(bakehouse).Water(reference, swapped, holds);
        var strict = Problem(swapped, [.. water.Union(AcidsForSoda())]) with { Fixed = doses, Habits = habits with { NewIngredients = 1 } };
        return [new Way(strict, 0, []), new Way(strict with { LinesKeepTheirRoom = false }, Weights.RoomOutgrown, [])];
    }

    /// <summary>The dose is free: what was asked to come in does the work alone if it can; else anything that does it.</summary>
    public ImmutableArray<Way> WithAnyDose()
    {
        var candidates = new Candidates(bakehouse) { Named = habits.Named }
            .For(reference, holds, Role.Acid, Role.Liquid)
            .RemoveAll(BringsBackWhatWentOut);
        var wanted = swaps
            .Select(swap => swap.To)
            .OfType<Ingredient>()
            .Where(ingredient => reference.MassOf(ingredient) == Grams.None)
            .ToImmutableHashSet();
        var acids = AcidsForSoda();
        var asked = Problem(reference, [.. wanted, .. acids.Where(acid => !wanted.Contains(acid))]) with
        {
            LinesKeepTheirRoom = false,
            Fixed = StayingInPart,
            Required = wanted,
            Habits = habits with { NewIngredients = wanted.Count + (acids.IsEmpty ? 0 : 1) },
        };
        var free = Problem(reference, candidates) with { LinesKeepTheirRoom = false, Fixed = StayingInPart };
        return wanted.IsEmpty
            ? [new Way(free, 0, [])]
            : [new Way(asked, 0, []), new Way(free, Weights.OtherThanAsked, [])];
    }

    /// <summary>What goes out in part, and what stays of it: what was asked for is not undone.</summary>
    private ImmutableDictionary<Ingredient, Grams> StayingInPart =>
        swaps.Where(swap => swap.Goes is not null).ToImmutableDictionary(swap => swap.From, swap => swapped.MassOf(swap.From));

    /// <summary>Where soda comes in, acid must come with it.</summary>
    private ImmutableArray<Ingredient> AcidsForSoda() => swaps.Any(swap => swap.To?.Role == Role.Base)
        ? new Candidates(bakehouse).Acids(reference, swapped, holds).RemoveAll(BringsBackWhatWentOut)
        : [];

    /// <summary>Whoever swaps an egg away wants no egg white in its place: what shares an allergen or a group with what
    /// goes out is not proposed, unless what the reader asks to bring in shares it too.</summary>
    private bool BringsBackWhatWentOut(Ingredient ingredient)
    {
        var broughtByWish = swaps.Select(swap => swap.To).OfType<Ingredient>().SelectMany(KindsOf).ToHashSet();
        var gone = swaps.Where(swap => swap.Goes is null).SelectMany(swap => KindsOf(swap.From)).Where(kind => !broughtByWish.Contains(kind));
        return KindsOf(ingredient).Intersect(gone).Any();
    }

    private static IEnumerable<string> KindsOf(Ingredient ingredient) =>
        ingredient.Allergens.OnEitherList.Union(ingredient.Groups);

    private FormulaProblem Problem(Formula start, ImmutableArray<Ingredient> candidates) => new(
        reference,
        start,
        holds,
        bakehouse.Balances.Anchored,
        bakehouse.Balances.NetCarbohydrate,
        candidates,
        habits,
        bakehouse.Practice);
}
