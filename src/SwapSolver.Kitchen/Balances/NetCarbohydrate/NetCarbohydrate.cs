using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Net carbohydrate of one slice [g/slice], by a named convention.</summary>
/// <param name="Settings">Band and words.</param>
/// <param name="Convention">What is taken off the carbohydrate.</param>
public sealed record NetCarbohydrate(BalanceSettings Settings, NetCarbohydrateConvention Convention) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads =>
        [Fact.Carbohydrate, Fact.Fibre, Fact.OrganicAcid, Fact.Polyols, Fact.Erythritol, Fact.Allulose];

    /// <summary>Net carbohydrate of the ingredient [g/g], never below 0: fibre is measured apart from carbohydrate and
    /// may exceed what is left of it. Organic acid stands in carbohydrate by difference and is neither sugar nor starch.</summary>
    public override PerGram Numerator(FactSheet facts) => new(Math.Max(
        0,
        facts[Fact.Carbohydrate]
        - facts[Fact.Fibre]
        - facts[Fact.OrganicAcid]
        - (Convention.ErythritolTakenOff.Share * facts[Fact.Erythritol])
        - (Convention.OtherPolyolsTakenOff.Share * (facts[Fact.Polyols] - facts[Fact.Erythritol]))
        - (Convention.AlluloseTakenOff.Share * facts[Fact.Allulose])));

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Slices(reference.Slices);

    /// <summary>Open: a cap is the caller's to set.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Fixed;
}
