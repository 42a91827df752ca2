using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>So much of one fact in a slice or in the loaf, in the unit of the fact: g, mg, kcal or money.</summary>
/// <param name="Settings">Words; the band is open.</param>
/// <param name="Fact">The fact that is added up.</param>
/// <param name="Size">What it is told of.</param>
public sealed record PerPortion(BalanceSettings Settings, Fact Fact, PortionSize Size) : Balance(Settings)
{
    private const double MilligramsInAGram = 1000;

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact];

    /// <summary>The fact of one gram [g/g, mg/g, kcal/g or money/g]. Sheets hold minerals in grams, and are told in milligrams.</summary>
    public override PerGram Numerator(FactSheet facts) =>
        new(facts[Fact] * (Fact.Unit.StartsWith("mg", StringComparison.Ordinal) ? MilligramsInAGram : 1));

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) =>
        Size == PortionSize.Slice ? Balances.Basis.Slices(reference.Slices) : Balances.Basis.Loaf;

    /// <summary>Open: limits are the caller's to set.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Fixed;
}
