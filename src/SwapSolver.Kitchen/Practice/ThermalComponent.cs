using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>How one component of food takes, holds and carries heat.</summary>
/// <param name="Conductivity">Conductivity [W/(m K)].</param>
/// <param name="Density">Density [kg/m3].</param>
/// <param name="Heat">Heat capacity [kJ/(kg K)].</param>
/// <param name="Source">Key of the source in <c>data/sources.json</c>.</param>
/// <param name="Mark">How the figures are known.</param>
public sealed record ThermalComponent(Polynomial Conductivity, Polynomial Density, Polynomial Heat, string Source, Mark Mark);
