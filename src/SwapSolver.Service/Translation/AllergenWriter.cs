using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;

namespace SwapSolver.Service.Translation;

/// <summary>Writes the allergens of a formula, each with what brings it.</summary>
internal static class AllergenWriter
{
    /// <summary>The statement.</summary>
    public static V1.AllergenStatement Write(Formula formula, string caution)
    {
        var written = new V1.AllergenStatement { Caution = caution };
        written.Us.AddRange(Sources(formula, allergens => allergens.Us));
        written.Eu.AddRange(Sources(formula, allergens => allergens.Eu));
        written.MayContain.AddRange(Sources(formula, allergens => allergens.MayContain));
        written.NotStated.AddRange(formula.Lines.Select(line => line.Ingredient).Distinct().Where(ingredient => !ingredient.Allergens.AreKnown).Select(ResourceName.Of));
        return written;
    }

    private static IEnumerable<V1.AllergenSource> Sources(Formula formula, Func<Allergens, ImmutableArray<string>> list) =>
        BroughtAllergen.Of(formula, list).Select(brought =>
        {
            var source = new V1.AllergenSource { Allergen = brought.Allergen };
            source.Ingredients.AddRange(brought.By.Select(ResourceName.Of));
            return source;
        });
}
