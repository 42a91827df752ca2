using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Eggs in the loaf, by the mass of one egg of the reference [eggs/loaf]. A reference without eggs has no reading.</summary>
/// <param name="Settings">Words; the band is open.</param>
public sealed record EggCount(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [];

    /// <summary>1 for what is counted by the egg, be it whole, white or yolk; else 0 [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => IsEgg(facts.Ingredient) ? PerGram.Itself : PerGram.None;

    /// <summary>One egg [g]: the heaviest of those in the reference, so that a white counts as its part of a whole one.</summary>
    public override Basis Basis(Formula reference) => Balances.Basis.Mass(new Grams(reference.Lines
        .Where(line => line.Grams > Grams.None)
        .Select(line => Line.UnitOf(line.Ingredient, line.Size ?? EggSize.LargeUs)?.Value ?? 0)
        .DefaultIfEmpty(0)
        .Max()));

    /// <summary>Open: limits are the caller's to set.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Fixed;

    /// <inheritdoc/>
    public override ImmutableArray<Row> Rows(Formula reference, Band band, Draw draw) =>
        Basis(reference).Constant > 0 ? base.Rows(reference, band, draw) : [];

    private static bool IsEgg(Ingredient ingredient) => !ingredient.CountedUnits.IsEmpty;
}
