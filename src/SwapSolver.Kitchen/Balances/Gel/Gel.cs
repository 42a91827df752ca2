using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Gel-forming fibre and gum, as psyllium husk powder of the same strength, by batter [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record Gel(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.GelStrength];

    /// <summary>Psyllium husk powder that the ingredient stands for [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.GelStrength]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;
}
