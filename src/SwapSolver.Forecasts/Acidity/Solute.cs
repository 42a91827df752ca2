using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>So much of a dissociating thing in the water.</summary>
/// <param name="Dissociation">What it is.</param>
/// <param name="Molality">All of its forms together [mol/kg].</param>
internal readonly record struct Solute(Dissociation Dissociation, double Molality);
