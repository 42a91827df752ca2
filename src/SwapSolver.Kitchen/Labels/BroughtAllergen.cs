using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Labels;

/// <summary>One allergen of a formula and what brings it.</summary>
/// <param name="Allergen">Id of the allergen.</param>
/// <param name="By">The ingredients that bring it, in the order of the formula.</param>
public sealed record BroughtAllergen(string Allergen, ImmutableArray<Ingredient> By)
{
    /// <summary>The allergens of a formula by one list, by id.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="list">What a list says of one ingredient.</param>
    public static ImmutableArray<BroughtAllergen> Of(Formula formula, Func<Allergens, ImmutableArray<string>> list) =>
    [
        .. formula.Lines
            .Select(line => line.Ingredient)
            .Distinct()
            .SelectMany(ingredient => list(ingredient.Allergens).Select(allergen => (Allergen: allergen, Ingredient: ingredient)))
            .GroupBy(pair => pair.Allergen, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new BroughtAllergen(group.Key, [.. group.Select(pair => pair.Ingredient)])),
    ];

    /// <summary>What a list of that id says of one ingredient.</summary>
    /// <param name="list"><c>us</c> or <c>eu</c>.</param>
    public static Func<Allergens, ImmutableArray<string>> ByList(string list) =>
        list == "us" ? allergens => allergens.Us : allergens => allergens.Eu;
}
