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
    /// <summary>Whether anybody stated them. What nobody stated is not known, and never taken to be none.</summary>
    public bool AreKnown { get; init; } = true;

    /// <summary>Ids of what is on either list, each once.</summary>
    public ImmutableArray<string> OnEitherList { get; } = [.. Us.Union(Eu)];

    /// <summary>Whether the ingredient carries the allergen by either list, as far as is known.</summary>
    public bool Carries(string allergen) => Us.Contains(allergen) || Eu.Contains(allergen);

    /// <summary>Whether leaving the allergen out means leaving the ingredient out: it carries it, or nobody knows.</summary>
    public bool MayBe(string allergen) => !AreKnown || Carries(allergen);
}
