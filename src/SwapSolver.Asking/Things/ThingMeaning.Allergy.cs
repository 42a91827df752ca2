using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking.Things;

/// <content>What somebody who is allergic to one form of a food keeps away from.</content>
internal sealed partial class ThingMeaning
{
    /// <summary>What an allergy to something named is one to, which is told; null where it is to no more than that.</summary>
    private LeftOutWish[]? OfAllergy(Lexeme lexeme)
    {
        var thing = lexeme.Thing!;
        if (thing.LeftOut is { } group)
        {
            return IdOf(group) is var id && !IsAllergen(id) && words.SoldInParts.FirstOrDefault(allergen => HasAllOf(id, allergen)) is { } whole
                ? Told(whole, new LeftOutWish(whole, whole))
                : null;
        }

        // Where the word is one for several, it is that of which one is in the loaf.
        if ((Named(thing) ?? OwnLike(thing)) is not { } form)
        {
            return null;
        }

        return words.SoldInParts.FirstOrDefault(form.Allergens.Carries) is { } allergen ? Told(allergen, new LeftOutWish(allergen, allergen))
            : Species(form) is { } all && !(all is [var lone] && lone.Id == form.Id) ? Told(words.WordsOf(form.Id).First(), all)
            : null;

        LeftOutWish[] Told(string of, params LeftOutWish[] wishes)
        {
            assumed.Add(sentences.Say("asked-allergen", ("thing", lexeme.Text), ("ingredient", of)));
            return wishes;
        }
    }

    /// <summary>Whether everything of a group carries an allergen: all cheese holds milk.</summary>
    private bool HasAllOf(string group, string allergen) =>
        words.Pantry.Ids.Select(Found).Where(one => one.Groups.Contains(group)).Select(one => one.Allergens.Carries(allergen)).DefaultIfEmpty(false).All(carries => carries);

    /// <summary>All whose name begins with the same plant, whatever was made of it: who is allergic to almond flour drinks no almond drink; null where
    /// the name does not tell.</summary>
    private LeftOutWish[]? Species(Ingredient form)
    {
        var species = words.WordsOf(form.Id).First();
        return !words.Tells(species) ? null
            : words.Of([species])?.LeftOut is { } group ? [new LeftOutWish(IdOf(group), group)]
            : [.. words.Pantry.Ids.Where(id => words.WordsOf(id).First() == species).Select(id => new LeftOutWish(id, id))];
    }
}
