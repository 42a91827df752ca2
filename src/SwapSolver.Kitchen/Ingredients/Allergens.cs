using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>The allergens of one ingredient, by list.</summary>
/// <param name="Us">Ids of the US list (the nine).</param>
/// <param name="Eu">Ids of EU Annex II (the fourteen).</param>
/// <param name="MayContain">Ids that may come in by cross-contact.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record Allergens(
    ImmutableArray<string> Us,
    ImmutableArray<string> Eu,
    ImmutableArray<string> MayContain,
    string Source,
    Mark Mark)
{
    /// <summary>Whether the ingredient carries the allergen by either list.</summary>
    public bool Carries(string allergen) => Us.Contains(allergen) || Eu.Contains(allergen);
}
