using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The allergens that a packet or a table states.</summary>
/// <param name="Contains">Allergen ids of either list.</param>
/// <param name="MayContain">Allergen ids that may come in by cross-contact.</param>
public sealed record StatedAllergens(ImmutableArray<string> Contains, ImmutableArray<string> MayContain);
