using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Grams of a role by the grams of that role in the reference [g/g]. A reference without the role has no
/// reading, and so no band.</summary>
/// <param name="Settings">Band and words.</param>
/// <param name="Role">The role.</param>
public sealed record RoleMass(BalanceSettings Settings, Role Role) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [];

    /// <summary>1 for an ingredient of the role, else 0 [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) =>
        facts.Ingredient.Role == Role ? PerGram.Itself : PerGram.None;

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Mass(reference.MassOf(Role));

    /// <inheritdoc/>
    public override ImmutableArray<Row> Rows(Formula reference, Band band, Draw draw) =>
        reference.MassOf(Role) > Grams.None ? base.Rows(reference, band, draw) : [];
}
