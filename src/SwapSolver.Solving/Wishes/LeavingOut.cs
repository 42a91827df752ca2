using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving.Wishes;

/// <summary>Turns words into wishes to leave something out.</summary>
/// <param name="Pantry">The pantry with its allergens and groups.</param>
/// <param name="Phrases">The words.</param>
public sealed record LeavingOut(Pantry Pantry, Phrases Phrases)
{
    private const string Dairy = "dairy";

    /// <summary>Every word that can be left out.</summary>
    public IEnumerable<string> KnownWords =>
    [
        .. Pantry.Allergens.SelectMany(allergen => allergen.Also.Prepend(allergen.Id)),
        .. Pantry.Groups.SelectMany(group => group.Also.Prepend(group.Id)),
        .. Pantry.Ids,
    ];

    /// <summary>The wish that a word stands for; null where the word is not known. A word that names an allergen and a
    /// group leaves out both.</summary>
    public Hold? Of(string word)
    {
        var allergen = Pantry.Allergens.FirstOrDefault(known => Names(known.Id, known.Also, word));
        var group = Pantry.Groups.FirstOrDefault(known => Names(known.Id, known.Also, word));
        if (allergen is null && group is null)
        {
            return Pantry.TryGet(word, out var ingredient) ? Of(ingredient) : null;
        }

        bool IsInGroup(Ingredient ingredient) => group is not null && ingredient.Groups.Contains(group.Id);
        return Make(
            allergen?.Id ?? group!.Id,
            allergen?.Name ?? group!.Name,
            ingredient => IsInGroup(ingredient) || (allergen is not null && ingredient.Allergens.MayBe(allergen.Id)),
            isCertainOf: ingredient => IsInGroup(ingredient) || (allergen is not null && ingredient.Allergens.Carries(allergen.Id)));
    }

    /// <summary>The wish to leave one ingredient out.</summary>
    public static Hold Of(Ingredient ingredient) => Make(ingredient.Id, ingredient.Name, ingredient.Equals);

    /// <summary>What a swap takes out: nobody reads a claim in it.</summary>
    public static Hold BySwap(Ingredient ingredient) =>
        Make(ingredient.Id, ingredient.Name, ingredient.Equals, mayBeReadAsClaim: false);

    /// <summary>The wish to meet a way of eating.</summary>
    public Hold Of(Diet diet) => diet switch
    {
        Diet.Vegetarian => Make("not-vegetarian", Phrases.Say("diet-vegetarian"), ingredient => !ingredient.Suits.Vegetarian),
        Diet.Vegan => Make("not-vegan", Phrases.Say("diet-vegan"), ingredient => !ingredient.Suits.Vegan),
        Diet.DairyFree => Make(Dairy, Phrases.Say("diet-dairy-free"), Of(Dairy)!.LeftOut!.Carries, isCertainOf: Of(Dairy)!.LeftOut!.IsCertainOf),
        _ => throw new ArgumentOutOfRangeException(nameof(diet), diet, "no such diet"),
    };

    private static bool Names(string id, ImmutableArray<string> also, string word) => id == word || also.Contains(word);

    private static Hold Make(string id, string name, Func<Ingredient, bool> carries, bool mayBeReadAsClaim = true, Func<Ingredient, bool>? isCertainOf = null)
    {
        var settings = new BalanceSettings(
            $"without:{id}", name, "g / g batter", Band.Nothing, null, null, null, string.Empty, string.Empty, []);
        var rule = new LeftOut(settings, carries) { MayBeReadAsClaim = mayBeReadAsClaim, IsCertainOf = isCertainOf ?? (_ => true) };
        return new Hold(settings.Id, rule, Band.Nothing, FromCaller: true);
    }
}
