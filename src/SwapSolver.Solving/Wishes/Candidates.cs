using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Wishes;

/// <summary>Chooses which ingredients a formula may newly take in, before any model is built.</summary>
/// <param name="Bakehouse">Facts, rules and habits.</param>
public sealed record Candidates(Bakehouse Bakehouse)
{
    private NetCarbohydrate NetCarbohydrate => Bakehouse.Balances.NetCarbohydrate;

    /// <summary>Ingredients that can do the work of what is left out, and never undo what the reference is: gluten
    /// free, vegan and vegetarian formulas stay so. Those that a wish leaves out are among them: the model keeps them
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
        return
        [
            .. Bakehouse.Pantry.Ingredients.Where(ingredient =>
                (ingredient.Usage.Offered || gone.Any(other => other.Groups.Intersect(ingredient.Groups).Any()))
                && (wanted.Contains(ingredient.Role) || (eggIsGone && (Sets(ingredient) || IsMoistFood(ingredient))))
                && reference.MassOf(ingredient) == Grams.None
                && Bakehouse.Balances.Know(ingredient)
                && KeepsWhatTheReferenceIs(flours, ingredient)
                && (ingredient.Role != Role.Flour || NetCarbohydrate.Numerator(ingredient.Typical).Value <= mostCarbohydrate)),
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

            if (ingredient.Role == Role.Fat)
            {
                yield return Role.Fat;
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
