using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Water in the batter by the water that its flours and gels bind [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record Hydration(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Water, Fact.WaterBound];

    /// <summary>Water that the ingredient brings to the batter [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Water]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Of(Fact.WaterBound);
}
