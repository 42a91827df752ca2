using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Acids;

/// <summary>An acid of known formula.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Taste">How it tastes in a crumb.</param>
/// <param name="Substance">Formula and what it becomes in water.</param>
/// <param name="Strength">How much of what is weighed is the acid [%]; the rest is water.</param>
/// <param name="Neutralising">What is published of its neutralising value.</param>
/// <param name="DissolvesAtOnce">Whether all of it is dissolved when mixing ends, though the last of its gas comes later.</param>
/// <param name="Timing">When it frees its gas.</param>
public sealed record PureAcid(
    string Id, string Taste, PureSubstance Substance, Percent Strength, Neutralising Neutralising, bool DissolvesAtOnce, AcidTiming Timing)
    : Leavener(Id, Taste)
{
    /// <summary>Neutralising value from molar mass and protons [g soda/100 g as weighed].</summary>
    /// <param name="soda">Molar mass of sodium bicarbonate [g/mol].</param>
    public NeutralisingValue Computed(Figure soda) => new(
        100 * Strength.Share * Substance.ProtonsByCount.Value * soda.Range.Typical / Substance.GramsPerMole.Range.Typical);

    /// <summary>The neutralising value that counts [g soda/100 g as weighed].</summary>
    /// <param name="soda">Molar mass of sodium bicarbonate [g/mol].</param>
    public NeutralisingValue Counted(Figure soda) =>
        Neutralising is { Rule: NeutralisingRule.Published, PublishedGPer100G: { } published }
            ? new NeutralisingValue(published.Range.Typical)
            : Computed(soda);

    /// <summary>Protons that one formula unit gives at the soda end point by the value that counts [mol/mol].</summary>
    /// <param name="soda">Molar mass of sodium bicarbonate [g/mol].</param>
    public Protons ProtonsToSoda(Figure soda) => Neutralising.Rule == NeutralisingRule.Computed
        ? Substance.ProtonsByCount
        : new Protons(Counted(soda).Value / 100 / Strength.Share * Substance.GramsPerMole.Range.Typical / soda.Range.Typical);
}
