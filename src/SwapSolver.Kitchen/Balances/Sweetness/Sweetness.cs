using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Table sugar that would taste as sweet, by batter [g/g].</summary>
/// <param name="Settings">Words; the band is open.</param>
public sealed record Sweetness(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Sweetness];

    /// <summary>Sucrose that tastes as sweet as the ingredient [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Sweetness]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;
}
