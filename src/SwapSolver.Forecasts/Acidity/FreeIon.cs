using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>So much of an ion in the water.</summary>
/// <param name="Ion">What it is.</param>
/// <param name="Molality">How much [mol/kg].</param>
internal readonly record struct FreeIon(Ion Ion, double Molality);
