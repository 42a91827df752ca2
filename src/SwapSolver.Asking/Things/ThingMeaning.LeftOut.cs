using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking.Things;

/// <content>What is meant where something is to be left out.</content>
internal sealed partial class ThingMeaning
{
    /// <summary>What is to be left out.</summary>
    /// <param name="lexeme">What is named.</param>
    /// <param name="isAllergy">Whether somebody is allergic to it.</param>
    public IEnumerable<LeftOutWish> LeftOut(Lexeme lexeme, bool isAllergy)
    {
        var thing = lexeme.Thing!;
        if (isAllergy && OfAllergy(lexeme) is { } kept)
        {
            return kept;
        }

        if (thing.LeftOut is { } word)
        {
            if (word == Nuts)
            {
                assumed.Add(sentences.Say("asked-nuts", ("thing", lexeme.Text)));
            }

            var wish = new LeftOutWish(IdOf(word), word);
            if (!isAllergy && !IsAllergen(wish.Id) && !Holds(wish))
            {
                // Of what somebody is allergic to it is not said: what a packet may hold no formula tells.
                assumed.Add(sentences.Say("asked-none-counted", ("thing", lexeme.Text)));
            }

            return [wish];
        }

        if (thing.Ingredient is { } exact)
        {
            var meant = IsInFormula(exact.Id) ? exact : OwnLike(thing) ?? exact;
            Note(lexeme, thing, meant);
            if (!IsInFormula(meant.Id))
            {
                return [.. NotThere(lexeme, exact)];
            }

            // What was named is not to come in for what was meant.
            return [.. new[] { meant, exact }.DistinctBy(one => one.Id).Select(one => new LeftOutWish(one.Id, one.Id))];
        }

        var ids = words.Pantry.Ids.Where(id => thing.Words.All(words.WordsOf(id).Contains)).ToList();
        var ownLike = (thing.Says is null || IsSaidOf(thing) ? OwnLike(thing) : null) ?? OwnOfRole(thing);
        if (thing.Says is null && !ids.Any(IsInFormula) && ownLike is { } here)
        {
            // No chocolate is no cocoa where there is no other.
            Note(lexeme, thing, here);
            return [.. ids.Append(here.Id).Select(id => new LeftOutWish(id, id))];
        }

        if (thing.Says is { } says && ownLike is null)
        {
            problems.Add(sentences.Say("asked-other-thing", ("thing", lexeme.Text), ("reason", says)));
            // No potatoes, and so no starch of them; flour may be any.
            return thing.Words.Any(words.Tells) ? ids.Select(id => new LeftOutWish(id, id)) : [];
        }

        if (ids.Count > 0 && ownLike is null && !ids.Any(IsInFormula))
        {
            assumed.Add(sentences.Say("asked-not-there", ("ingredient", lexeme.Text)));
        }

        return (thing.Says is null ? ids : [ownLike!.Id]).Select(id => new LeftOutWish(id, id));
    }

    /// <summary>Whether a line of the formula bears every word that tells something: psyllium fibre is psyllium, and pumpkin spice is no pumpkin.</summary>
    private bool IsSaidOf(Thing thing) => OwnLike(thing) is { } own && thing.Words.All(word => words.IsPlain(word) || words.WordsOf(own.Id).Contains(word));

    /// <summary>What is to be left out where the formula has no such line: the line that it is a part of, or itself, that it may not come in.</summary>
    private IEnumerable<LeftOutWish> NotThere(Lexeme lexeme, Ingredient named)
    {
        var whole = words.WholeOf(named.Id) is { } id && IsInFormula(id) ? Found(id) : null;
        assumed.Add(whole is null
            ? sentences.Say("asked-not-there", ("ingredient", named.Name))
            : sentences.Say("asked-part-of", ("thing", lexeme.Text), ("ingredient", whole.Name)));
        return new[] { named, whole }.OfType<Ingredient>().Select(one => new LeftOutWish(one.Id, one.Id));
    }

    /// <summary>Whether the formula holds what is to be left out.</summary>
    public bool Holds(LeftOutWish wish) =>
        Ingredients.Any(one => one.Id == wish.Id || one.Groups.Contains(wish.Word) || one.Groups.Contains(wish.Id) || one.Allergens.Carries(wish.Id));

    /// <summary>Whether somebody may have to keep away from what is named: an allergen, or what carries one.</summary>
    public bool MayHurt(Thing thing) =>
        IsAllergen(thing)
        || ((thing.Ingredient ?? OwnLike(thing)) is { Allergens: var carried } && !(carried.Us.IsEmpty && carried.Eu.IsEmpty));

    /// <summary>Whether an id is that of an allergen.</summary>
    public bool IsAllergen(string id) => words.Pantry.Allergens.Any(one => one.Id == id);

    /// <summary>Whether an allergen is named.</summary>
    public bool IsAllergen(Thing thing) => thing.LeftOut is { } word && IsAllergen(IdOf(word));

    /// <summary>The line that is called by the name of an allergen and holds none of it, as almond milk is milk; null where there is none.</summary>
    public Ingredient? CalledAlike(Lexeme named) => named.Thing is { LeftOut: { } word } thing && words.OwnWordOf(thing) is { } bears
        ? Ingredients.FirstOrDefault(one => words.WordsOf(one.Id).Contains(bears) && !one.Allergens.Carries(IdOf(word)))
        : null;

    /// <summary>Whether something is of the kind that one word names: oat flour is of oats, and xylitol is a sweetener.</summary>
    public bool IsOfKind(Ingredient one, Thing kind) =>
        kind is { LeftOut: null, Words: [var word] } && (words.WordsOf(one.Id).Contains(word) || (Enum.TryParse<Role>(word, ignoreCase: true, out var role) && one.Role == role));

    /// <summary>Whether one is a part of another, as egg white is of whole egg.</summary>
    public bool IsPartOf(Ingredient part, Ingredient whole) => words.WholeOf(part.Id) == whole.Id;

    /// <summary>Whether a word that is to be left out names an allergen or group that other lines hold too, and what comes in does not.</summary>
    public bool IsMoreThanOneLine(Lexeme lacked, Lexeme newcomer) =>
        lacked.Thing!.LeftOut is { } word && Ingredients.Count(one => one.Allergens.Carries(IdOf(word))) > 1 && newcomer.Thing!.Ingredient?.Allergens.Carries(IdOf(word)) is not true;
}
