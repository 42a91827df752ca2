using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Protein that coagulates on heating and sets the crumb, by batter [g/g].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record SettingProtein(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Protein, Fact.SettingShareOfProtein];

    /// <summary>Setting protein of the ingredient [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Protein] * facts[Fact.SettingShareOfProtein]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;
}
