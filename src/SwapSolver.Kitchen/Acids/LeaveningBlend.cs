using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Acids;

/// <summary>A baking powder: bicarbonate and acids in one; the rest is starch.</summary>
/// <param name="Id">Id of the ingredient.</param>
/// <param name="Taste">How it tastes in a crumb.</param>
/// <param name="Parts">Its bicarbonate and its acids.</param>
public sealed record LeaveningBlend(string Id, string Taste, ImmutableArray<BlendPart> Parts) : Leavener(Id, Taste)
{
    /// <summary>Carbon dioxide that its own acid frees from its own base [% of the powder's mass], the figure that law and trade set floors to.</summary>
    /// <param name="powder">Facts of the ingredient.</param>
    /// <param name="carbonDioxide">Molar mass of carbon dioxide [g/mol].</param>
    public static Percent AvailableCarbonDioxide(FactSheet powder, Figure carbonDioxide) =>
        new(Math.Min(powder[Fact.Acid], powder[Fact.Base]) * carbonDioxide.Range.Typical / 10);
}
