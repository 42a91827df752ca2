using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Wishes;

/// <summary>Chooses which ingredients a formula may newly take in, before any model is built. How many they are does not
/// hang on how many foods the kitchen wrote down: all that are shipped and fit, what the caller names, and the nearest few
/// of its own.</summary>
/// <param name="Bakehouse">Facts, rules and habits.</param>
public sealed record Candidates(Bakehouse Bakehouse)
{
    /// <summary>Ingredients that the caller names: they are let in whatever they are, where all that the rules read is known of them.</summary>
    public ImmutableArray<Ingredient> Named { get; init; } = [];

    private NetCarbohydrate NetCarbohydrate => Bakehouse.Balances.NetCarbohydrate;

    /// <summary>Ingredients that can do the work of what is left out, and never undo what the reference is: gluten
    /// free, vegan and vegetarian formulas stay so. Shipped ones that a wish leaves out are among them: the model keeps them
    /// out for as long as the wish holds, and a search for conflicts may drop the wish.</summary>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="holds">What the answer must keep.</param>
    /// <param name="roles">Further roles to look in.</param>
    public ImmutableArray<Ingredient> For(Formula reference, ImmutableArray<Hold> holds, params ReadOnlySpan<Role> roles)
    {
        var leftOut = holds.Select(hold => hold.LeftOut).OfType<LeftOut>().ToList();
        var gone = reference.Lines
            .Select(line => line.Ingredient)
            .Where(ingredient => leftOut.Any(rule => rule.Carries(ingredient)))
            .ToList();
        var wanted = RolesFor(gone).Union(roles.ToArray()).ToHashSet();
        var eggIsGone = gone.Any(ingredient => ingredient.Role == Role.Egg);
        var mostCarbohydrate = MostCarbohydrate(reference, gone);
        var flours = reference.Lines.Select(line => line.Ingredient).ToList();
        var fit = Bakehouse.Pantry.Offered.Where(ingredient =>
            (ingredient.Usage.Offered || gone.Any(other => other.Groups.Intersect(ingredient.Groups).Any()))
            && (wanted.Contains(ingredient.Role) || (eggIsGone && (Sets(ingredient) || IsMoistFood(ingredient))))
            && KeepsWhatTheReferenceIs(flours, ingredient)
            && (ingredient.Role != Role.Flour || NetCarbohydrate.Numerator(ingredient.Typical).Value <= mostCarbohydrate));
        return Choose(fit, reference, reference, holds, [.. gone]);
    }

    /// <summary>What is water and nothing else, where the formula has none.</summary>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="start">The formula that it would come into.</param>
    /// <param name="holds">What the answer must keep; what they leave out is not among them.</param>
    public ImmutableArray<Ingredient> Water(Formula reference, Formula start, ImmutableArray<Hold> holds) => Choose(
        Bakehouse.Pantry.Offered.Where(ingredient =>
            ingredient.Typical[Fact.Water] >= Bakehouse.Practice.PlainWater.Share
            && !holds.Any(hold => hold.LeftOut is { } rule && rule.Carries(ingredient))),
        reference,
        start,
        holds,
        []);

    /// <summary>The acids that soda can come with.</summary>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="start">The formula that they would come into.</param>
    /// <param name="holds">What the answer must keep.</param>
    public ImmutableArray<Ingredient> Acids(Formula reference, Formula start, ImmutableArray<Hold> holds) => Choose(
        Bakehouse.Pantry.Offered.Where(ingredient => ingredient.Role == Role.Acid && ingredient.Usage.Offered), reference, start, holds, []);

    /// <summary>All that are shipped or named, and of this kitchen's own foods a few of each role: its own bags before the
    /// rows of a table, and the nearest of them first. What a wish leaves out has no place among the few: nothing is as near
    /// to a nut as another nut.</summary>
    private ImmutableArray<Ingredient> Choose(
        IEnumerable<Ingredient> fit, Formula reference, Formula start, ImmutableArray<Hold> holds, ImmutableArray<Ingredient> gone)
    {
        bool IsNew(Ingredient ingredient) => start.MassOf(ingredient) == Grams.None && Bakehouse.Balances.Know(ingredient);
        var all = fit.Where(IsNew).ToList();
        var nearness = new Lazy<Nearness>(() => new Nearness(reference, holds, gone));
        var own = all.Where(ingredient => ingredient.Origin is not null && !holds.Any(hold => hold.LeftOut is { } rule && rule.Carries(ingredient)))
            .GroupBy(ingredient => ingredient.Role)
            .SelectMany(role => role
                .OrderBy(ingredient => ingredient.Origin == FoodOrigin.Packet ? 0 : 1)
                .ThenBy(nearness.Value.Of)
                .ThenBy(ingredient => ingredient.Id, StringComparer.Ordinal)
                .Take(Bakehouse.Practice.OwnFoodsOfARole));
        return
        [
            .. all.Where(ingredient => ingredient.Origin is null).Concat(own).Union(Named.Where(IsNew))
                .OrderBy(ingredient => ingredient.Id, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Role> RolesFor(List<Ingredient> gone)
    {
        foreach (var ingredient in gone)
        {
            // Salt and spice may simply go: nothing needs to stand in for them.
            if (ingredient.Role is not (Role.Salt or Role.Flavour))
            {
                yield return ingredient.Role;
            }

            if (ingredient.Role is Role.Flour or Role.Gel or Role.Egg)
            {
                yield return Role.Gel;
            }

            if (ingredient.Typical[Fact.Water] > 0.3 || ingredient.Role == Role.Egg)
            {
                yield return Role.Liquid;
            }

            if (ingredient.Typical[Fact.Acid] > 0 || ingredient.Typical[Fact.Base] > 0 || ingredient.Role == Role.Yeast)
            {
                yield return Role.Acid;
            }

            if (ingredient.Typical[Fact.Base] > 0 || ingredient.Role == Role.Yeast)
            {
                yield return Role.Base;
                yield return Role.LeaveningBlend;
            }
        }
    }

    private double MostCarbohydrate(Formula reference, List<Ingredient> gone)
    {
        double Of(Ingredient ingredient) => NetCarbohydrate.Numerator(ingredient.Typical).Value;
        var flours = reference.Lines.Where(line => line.Ingredient.Role == Role.Flour).ToList();
        var mass = flours.Sum(line => line.Grams.Value);
        var average = mass > 0 ? flours.Sum(line => line.Grams.Value * Of(line.Ingredient)) / mass : 0;
        var ofGone = gone.Where(ingredient => ingredient.Role == Role.Flour).Select(Of).DefaultIfEmpty(0).Max();
        return Math.Max(
            Bakehouse.Practice.LowCarbohydrateFlour.Value,
            Bakehouse.Practice.CarbohydrateOverReference.Share * Math.Max(average, ofGone));
    }

    /// <summary>Fruit, vegetables and cultured dairy, which bakers put in an egg's place for its water.</summary>
    private bool IsMoistFood(Ingredient ingredient) => ingredient.Typical[Fact.Water] >= Bakehouse.Practice.MoistFoodWater.Share
        && (ingredient.Role == Role.Flavour || (ingredient.Role == Role.Acid && ingredient.Typical[Fact.Protein] > 0.01));

    private bool Sets(Ingredient ingredient) => ingredient.Typical[Fact.SettingShareOfProtein] >= Bakehouse.Practice.SetsLikeEgg.Share
        && ingredient.Typical[Fact.Protein] >= 0.5;

    private static bool KeepsWhatTheReferenceIs(List<Ingredient> present, Ingredient ingredient) =>
        (ingredient.Suits.GlutenFree || present.Any(other => !other.Suits.GlutenFree))
        && (ingredient.Suits.Vegan || present.Any(other => !other.Suits.Vegan))
        && (ingredient.Suits.Vegetarian || present.Any(other => !other.Suits.Vegetarian));
}
