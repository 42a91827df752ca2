using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>One acid or base of a powder.</summary>
/// <param name="Of">The acid or the bicarbonate.</param>
/// <param name="Percent">Its share of the powder by mass [%].</param>
public sealed record BlendPart(Leavener Of, Figure Percent);
