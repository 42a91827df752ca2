using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What may be said beside a label of allergens and gluten. Free-from is never claimed: an ingredient list does not
/// show what is in the food.</summary>
/// <param name="Allergens">The allergens by name.</param>
/// <param name="Phrases">The words of cards.</param>
public sealed record LabelStatements(ImmutableArray<AllergenName> Allergens, Phrases Phrases)
{
    /// <summary>The statements of a formula by the law of one place.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="law">The law.</param>
    /// <param name="variantOf">The formula that it is a variant of; null where it is none.</param>
    public ImmutableArray<string> Of(Formula formula, LabelLaw law, Formula? variantOf = null) =>
    [
        .. law.AllergenLists.Select(list => Contains(formula, list)),
        .. MayContain(formula),
        .. NotStated(formula),
        .. variantOf is null ? [] : law.AllergenLists.SelectMany(list => MadeWithout(formula, variantOf, list)),
        Gluten(formula, law.Gluten),
        Phrases.Say("cross-contact"),
        Phrases.Say("local-rules"),
    ];

    private string Contains(Formula formula, string list)
    {
        var brought = BroughtAllergen.Of(formula, BroughtAllergen.ByList(list));
        return brought.IsEmpty
            ? Phrases.Say("contains-none", ("list", NameOf(list)))
            : Phrases.Say("contains", ("list", NameOf(list)), ("allergens", Words(brought)));
    }

    private IEnumerable<string> MayContain(Formula formula)
    {
        var brought = BroughtAllergen.Of(formula, allergens => allergens.MayContain);
        return brought.IsEmpty ? [] : [Phrases.Say("may-contain", ("allergens", Words(brought)))];
    }

    private IEnumerable<string> NotStated(Formula formula)
    {
        var silent = formula.Lines.Select(line => line.Ingredient).Distinct().Where(ingredient => !ingredient.Allergens.AreKnown).Select(ingredient => ingredient.Name).ToList();
        return silent.Count == 0 ? [] : [Phrases.Say("not-stated", ("ingredients", Phrases.List(silent)))];
    }

    /// <summary>What the variant left out. Where an ingredient's allergens were never stated, nothing can be said to be left out.</summary>
    private IEnumerable<string> MadeWithout(Formula formula, Formula variantOf, string list)
    {
        var by = BroughtAllergen.ByList(list);
        if (formula.Lines.Any(line => !line.Ingredient.Allergens.AreKnown))
        {
            return [];
        }

        var left = formula.Lines.SelectMany(line => by(line.Ingredient.Allergens)).ToHashSet(StringComparer.Ordinal);
        var gone = BroughtAllergen.Of(variantOf, by).Where(one => !left.Contains(one.Allergen)).Select(one => NounOf(one.Allergen)).ToList();
        return gone.Count == 0 ? [] : [Phrases.Say("made-without", ("allergens", Phrases.List(gone)), ("list", NameOf(list)))];
    }

    private string Gluten(Formula formula, GlutenRule rule)
    {
        var carriers = formula.Lines.Select(line => line.Ingredient).Distinct().Where(ingredient => !ingredient.Suits.GlutenFree).Select(ingredient => ingredient.Name).ToList();
        var condition = (Gap: "condition", Filling: rule.ClaimOf);
        return carriers.Count > 0 ? Phrases.Say("gluten-in", ("ingredients", Phrases.List(carriers)))
            : formula.Lines.Any(line => !line.Ingredient.Allergens.AreKnown) ? Phrases.Say("gluten-not-known", condition, ("law", rule.Law), ("date", rule.AsOf))
            : Phrases.Say("gluten-none-used", condition, ("law", rule.Law), ("date", rule.AsOf));
    }

    private string Words(ImmutableArray<BroughtAllergen> brought) => string.Join(
        ", ", brought.Select(one => Phrases.Say("allergen-by", ("allergen", TitleOf(one.Allergen)), ("ingredients", Phrases.List(one.By.Select(ingredient => ingredient.Name))))));

    private string TitleOf(string allergen) => Allergens.FirstOrDefault(known => known.Id == allergen)?.Name ?? allergen;

    /// <summary>The allergen as it stands before 'ingredients', as <c>tree-nut</c>.</summary>
    private string NounOf(string allergen) => Phrases.ById.GetValueOrDefault($"noun-{allergen}") ?? TitleOf(allergen);

    private string NameOf(string list) => Phrases.Say($"list-{list}");
}
