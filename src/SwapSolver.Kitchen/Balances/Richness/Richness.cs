using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Fat by batter [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record Richness(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Fat];

    /// <summary>Fat of the ingredient [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Fat]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;
}
