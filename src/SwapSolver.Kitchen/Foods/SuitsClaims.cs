using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What a packet or a table says of who can eat a food; null where it says nothing.</summary>
/// <param name="Vegan">Whether a vegan eats it.</param>
/// <param name="Vegetarian">Whether a vegetarian eats it.</param>
/// <param name="GlutenFree">Whether it is free of gluten.</param>
public sealed record SuitsClaims(bool? Vegan, bool? Vegetarian, bool? GlutenFree)
{
    /// <summary>Whether it is said to be vegan and not vegetarian, which nothing is.</summary>
    public bool Contradict => Vegan is true && Vegetarian is false;

    /// <summary>The stated allergen that speaks against each claim; null where none does.</summary>
    /// <param name="allergens">The stated allergens; null where none were stated.</param>
    public (string? Vegan, string? Vegetarian, string? GlutenFree) Denied(StatedAllergens? allergens)
    {
        string? By(bool? said, IEnumerable<string> against) =>
            said is true && allergens is not null ? against.FirstOrDefault(id => allergens.Contains.Contains(id)) : null;
        return (
            By(Vegan, SuitsAndAllergens.AgainstVegan),
            By(Vegetarian, SuitsAndAllergens.AgainstVegetarian),
            By(GlutenFree, SuitsAndAllergens.AgainstGlutenFree));
    }

    /// <summary>Who can eat it; null where nothing was said. What nobody says is not taken to be so, and what is vegan is
    /// vegetarian.</summary>
    /// <param name="like">The ingredient that it behaves like, which speaks where nobody else does.</param>
    public Suits? After(Ingredient? like) => Vegan is null && Vegetarian is null && GlutenFree is null
        ? null
        : new Suits(
            Vegan ?? (Vegetarian is not false && like is { Suits.Vegan: true }),
            Vegetarian ?? (Vegan is true || like is { Suits.Vegetarian: true }),
            GlutenFree ?? like is { Suits.GlutenFree: true });
}
