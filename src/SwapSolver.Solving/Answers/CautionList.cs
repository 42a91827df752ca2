using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Cautions, shown where the danger is.</summary>
/// <param name="Pantry">The pantry with its allergen names.</param>
/// <param name="Phrases">The words.</param>
public sealed record CautionList(Pantry Pantry, Phrases Phrases)
{
    /// <summary>Behaviour that needs alkali to show; a formula without base does not show it.</summary>
    private const string WithAlkali = "-with-alkali";

    /// <summary>The cautions of a formula by itself.</summary>
    public ImmutableArray<string> Of(Formula formula)
    {
        var ingredients = formula.Lines.Select(line => line.Ingredient).Distinct().ToList();
        var hasBase = ingredients.Any(ingredient => ingredient.Typical[Fact.Base] > 0);
        var allergens = Names(ingredients.SelectMany(ingredient => ingredient.Allergens.Us.Union(ingredient.Allergens.Eu)));
        var mayContain = Names(ingredients.SelectMany(ingredient => ingredient.Allergens.MayContain));
        return
        [
            .. If(allergens.Count > 0, () => Phrases.Say("caution-allergens", ("allergens", Kitchen.Wording.Phrases.List(allergens)))),
            .. If(mayContain.Count > 0, () => Phrases.Say("caution-may-contain", ("allergens", Kitchen.Wording.Phrases.List(mayContain)))),
            .. If(ingredients.Any(ingredient => ingredient.Allergens.Carries("egg")), () => Phrases.Say("caution-egg")),
            .. ingredients.SelectMany(ingredient => ingredient.Cautions
                .Select(caution => Phrases.Say("caution-of-ingredient", ("ingredient", ingredient.Name), ("caution", caution)))),
            .. ingredients.SelectMany(ingredient => ingredient.Behaviours
                .Where(behaviour => hasBase && behaviour.Kind.EndsWith(WithAlkali, StringComparison.Ordinal))
                .Select(behaviour => Phrases.Say("caution-of-ingredient", ("ingredient", ingredient.Name), ("caution", behaviour.Note)))),
            Phrases.Say("caution-net-carbs"),
            Phrases.Say("caution-estimates"),
        ];
    }

    /// <summary>The cautions of a formula that was solved for wishes: what came in, and what may be said of what went out.</summary>
    public ImmutableArray<string> Of(Formula reference, Formula formula, ImmutableArray<Hold> wishes)
    {
        var before = AllergensOf(reference);
        var brought = Names(AllergensOf(formula).Except(before));
        var leftOut = wishes
            .Where(wish => wish.LeftOut?.MayBeReadAsClaim == true)
            .Select(wish => wish.Balance.Settings.Title)
            .ToList();
        return
        [
            .. If(brought.Count > 0, () => Phrases.Say("caution-brought-in", ("allergens", Kitchen.Wording.Phrases.List(brought)))),
            .. If(leftOut.Count > 0, () => Phrases.Say("caution-made-without", ("wishes", Kitchen.Wording.Phrases.List(leftOut)))),
            .. Of(formula),
        ];
    }

    private static IEnumerable<string> If(bool holds, Func<string> caution) => holds ? [caution()] : [];

    private static HashSet<string> AllergensOf(Formula formula) =>
        [.. formula.Lines.SelectMany(line => line.Ingredient.Allergens.Us.Union(line.Ingredient.Allergens.Eu))];

    private List<string> Names(IEnumerable<string> allergens) =>
    [
        .. allergens.Distinct().Order(StringComparer.Ordinal)
            .Select(id => Pantry.Allergens.First(allergen => allergen.Id == id).Name),
    ];
}
