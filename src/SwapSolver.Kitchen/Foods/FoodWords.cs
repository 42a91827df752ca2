using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Kitchen.Foods;

/// <summary>Says what an ingredient is that was made of a stated food.</summary>
/// <param name="Phrases">The words.</param>
public sealed record FoodWords(Phrases Phrases)
{
    internal string About(StatedFood food, Ingredient? like) =>
        like is null ? Phrases.Say("food-about-table", ("food", food.Name)) : Phrases.Say("food-about-like", ("food", food.Name), ("like", like.Name));

    internal string NotFor(StatedFood food, Ingredient? like) => (like, food.Allergens) switch
    {
        (null, null) => Phrases.Say("food-not-for-unknown"),
        (null, _) => Phrases.Say("food-not-for-guessed"),
        ({ } taken, null) => Phrases.Say("food-not-for-allergens", ("like", taken.Name)),
        _ => Phrases.Say("food-not-for-like", ("like", like.Name)),
    };

    internal string Made(StatedFood food, Ingredient? like) => (food.Origin, like) switch
    {
        (FoodOrigin.Packet, null) => Phrases.Say("food-made-packet"),
        (FoodOrigin.Packet, { } taken) => Phrases.Say("food-made-packet-like", ("like", taken.Name)),
        (_, null) => Phrases.Say("food-made-table"),
        (_, { } taken) => Phrases.Say("food-made-table-like", ("like", taken.Name)),
    };
}
