using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Practice;

/// <summary>Least carbon dioxide that a baking powder must yield somewhere.</summary>
/// <param name="Where">Country.</param>
/// <param name="Least">Available carbon dioxide [% of the powder's mass].</param>
/// <param name="Source">Key of the source.</param>
public sealed record PowderFloor(string Where, Percent Least, string Source);
