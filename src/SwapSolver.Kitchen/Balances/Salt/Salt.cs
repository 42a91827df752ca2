using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Salt that all the sodium stands for, by batter [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record Salt(BalanceSettings Settings) : Balance(Settings)
{
    /// <summary>Salt by sodium [g/g]: sodium times 2.5; eu-1169-2011.</summary>
    private const double SaltPerSodium = 2.5;

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Sodium];

    /// <summary>Salt that the ingredient's sodium stands for [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Sodium] * SaltPerSodium);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;

    /// <summary>Open: limits on salt are the caller's to set.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Fixed;
}
