using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>A bicarbonate.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Taste">How it tastes in a crumb where it is left over.</param>
/// <param name="Substance">Formula and what it becomes in water.</param>
/// <param name="FreedByHeatPercent">Share of its carbon dioxide that heat alone frees [%]; what else heat drives off leaves by the same share.</param>
public sealed record Bicarbonate(string Id, string Taste, PureSubstance Substance, Figure FreedByHeatPercent)
    : Leavener(Id, Taste);
