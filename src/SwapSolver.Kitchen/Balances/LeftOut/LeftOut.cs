using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Grams of what is to be left out, by batter [g/g]; the band lets in nothing. Allergens, groups, diets and
/// single ingredients are all this one rule, by fact and never by name matching.</summary>
/// <param name="Settings">Words; the band is nothing at all.</param>
/// <param name="Carries">Whether an ingredient is what is to be left out.</param>
public sealed record LeftOut(BalanceSettings Settings, Func<Ingredient, bool> Carries) : Balance(Settings)
{
    /// <summary>Whether leaving it out may be read as a claim, as where a reader asks for a loaf without it; not so where
    /// one ingredient is swapped for another.</summary>
    public required bool MayBeReadAsClaim { get; init; }

    /// <summary>Whether something that is left out is stated to be it; not so where nobody stated its allergens.</summary>
    public required Func<Ingredient, bool> IsCertainOf { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [];

    /// <summary>1 for a carrier, else 0 [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) =>
        Carries(facts.Ingredient) ? PerGram.Itself : PerGram.None;

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;

    /// <summary>Nothing is let in, whatever the reference holds.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Balances.Band.Nothing;
}
