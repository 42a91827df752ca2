using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Models;

/// <summary>A formula to be found: what it starts from, what it must keep, what it may take in.</summary>
/// <param name="Reference">The formula that is known to work, in the size asked for; bands are counted on it.</param>
/// <param name="Start">The reference in steps of the scale and whole eggs; changes are counted from it.</param>
/// <param name="Holds">What the answer must keep.</param>
/// <param name="Anchors">Balances whose readings should stay close to the reference's.</param>
/// <param name="NetCarbohydrate">The balance that counts net carbohydrate.</param>
/// <param name="Candidates">Ingredients that may be new.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
/// <param name="Practice">The habits of the trade.</param>
public sealed record FormulaProblem(
    Formula Reference,
    Formula Start,
    ImmutableArray<Hold> Holds,
    ImmutableArray<Balance> Anchors,
    NetCarbohydrate NetCarbohydrate,
    ImmutableArray<Ingredient> Candidates,
    Habits Habits,
    KitchenPractice Practice)
{
    /// <summary>Lines whose grams are given and may not move; they need not be in the start.</summary>
    public ImmutableDictionary<Ingredient, Grams> Fixed { get; init; } = ImmutableDictionary<Ingredient, Grams>.Empty;

    /// <summary>New ingredients that must be in the bowl.</summary>
    public ImmutableHashSet<Ingredient> Required { get; init; } = [];

    /// <summary>The formula as it was before it was scaled; null where it was not.</summary>
    public Formula? ScaledFrom { get; init; }

    /// <summary>Sets of new ingredients that were found before and are not wanted again.</summary>
    public ImmutableArray<ImmutableArray<Ingredient>> Found { get; init; } = [];

    /// <summary>Whether a fat or liquid line keeps, by itself, the room that its role has. Loosened only where nothing fits.</summary>
    public bool LinesKeepTheirRoom { get; init; } = true;

    /// <summary>Whether a line of the start that is above its usage must come down to it; else it may stay as it was.</summary>
    public bool UsageBinds { get; init; }

    /// <summary>Wishes that may give way at a price, to find the nearest formula; none in an ordinary solve.</summary>
    public ImmutableHashSet<string> MayGiveWay { get; init; } = [];

    /// <summary>Whether everything that the holds read is known of an ingredient; what has no price cannot come in under a price.</summary>
    public bool CanBeHeld(Ingredient ingredient) => Holds.All(hold => hold.Balance.CanRead(ingredient));

    /// <summary>Kitchens in which bands must be kept too; none in a solve that goes by typical facts alone.</summary>
    public ImmutableArray<Scenario> Scenarios { get; init; } = [];

    /// <summary>Whether a wish leaves this ingredient out.</summary>
    public bool IsLeftOut(Ingredient ingredient) =>
        Holds.Any(hold => hold.LeftOut is { } rule && rule.Carries(ingredient));
}
