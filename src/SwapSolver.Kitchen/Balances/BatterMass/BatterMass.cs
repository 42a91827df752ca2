using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Batter by the batter of the reference: the same tin must still hold it [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record BatterMass(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [];

    /// <summary>1: every gram counts [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => PerGram.Itself;

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Mass(reference.BatterMass);
}
