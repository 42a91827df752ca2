using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Acid to the soda end point by base: 1 where the acid just uses up the soda [mmol/mmol].</summary>
/// <param name="Settings">Band and words.</param>
public sealed record Leavening(BalanceSettings Settings) : Balance(Settings)
{
    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Acid, Fact.Base];

    /// <summary>Acid of the ingredient to the soda end point [mmol H+/g].</summary>
    public override PerGram Numerator(FactSheet facts) => new(facts[Fact.Acid]);

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Of(Fact.Base);

    /// <summary>The fixed band, stretched to a reference that lies outside it: a variant need not be better leavened
    /// than the loaf that is known to work, and may not be worse.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw)
    {
        if (own() is not { } level)
        {
            // No base: acid for taste alone lies infinitely far above 1, and the loaf that works keeps it.
            var hasAcid = reference.Lines.Any(line => line.Grams > Grams.None && Numerator(draw(line.Ingredient)).Value > 0);
            return hasAcid ? Settings.Fixed with { High = null } : Settings.Fixed;
        }

        return Settings.Fixed.Of(level) switch
        {
            Standing.Below => Settings.Fixed with { Low = level },
            Standing.Above => Settings.Fixed with { High = level },
            _ => Settings.Fixed,
        };
    }
}
