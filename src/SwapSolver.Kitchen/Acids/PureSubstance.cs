using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Acids;

/// <summary>A substance of known formula and what it becomes in water.</summary>
/// <param name="Formula">Chemical formula, as <c>KC4H5O6</c>; water of crystals after a full stop.</param>
/// <param name="GramsPerMole">Molar mass [g/mol].</param>
/// <param name="Dissolved">What it sets free that gives or takes protons.</param>
/// <param name="Ions">What it sets free that only carries charge.</param>
public sealed record PureSubstance(
    string Formula, Figure GramsPerMole, ImmutableArray<DissociationCount> Dissolved, ImmutableArray<IonCount> Ions)
{
    /// <summary>Protons given at the soda end point by counting charges alone [mol/mol]: what all forms together lack to be neutral.</summary>
    public Protons ProtonsByCount { get; } = new(
        -Dissolved.Sum(part => part.Count * (part.Dissociation.ChargeWithAllProtons - part.Dissociation.ProtonsToSoda))
        - Ions.Sum(part => part.Count * part.Ion.Charge));
}
