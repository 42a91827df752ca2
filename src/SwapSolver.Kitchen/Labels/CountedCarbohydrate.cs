using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>Carbohydrate together with what was taken off it, so that nothing is taken off twice.</summary>
/// <param name="Amount">What is left [g].</param>
/// <param name="Without">What it no longer holds.</param>
public sealed record CountedCarbohydrate(PanelAmount Amount, ImmutableHashSet<Fact> Without)
{
    /// <summary>How far a part may exceed what is left, because both were analysed apart and rounded [share of the part].</summary>
    private const double Analyses = 0.05;

    /// <summary>The carbohydrate less one of its parts. A part that is off already stays off once; null where the part is
    /// larger than what is left, for then one of the two figures is on another basis.</summary>
    /// <param name="part">The part, as fibre.</param>
    /// <param name="amount">How much of it there is [g]; 0 or more.</param>
    public CountedCarbohydrate? Less(Fact part, PanelAmount amount)
    {
        if (Without.Contains(part))
        {
            return this;
        }

        var left = Amount.Value - amount.Value;
        return left < -Analyses * amount.Value ? null : new CountedCarbohydrate(new PanelAmount(Math.Max(0, left)), Without.Add(part));
    }
}
