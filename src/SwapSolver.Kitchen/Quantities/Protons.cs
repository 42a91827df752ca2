namespace SwapSolver.Kitchen.Quantities;

/// <summary>Protons that one formula unit of an acid gives to soda [mol/mol]; below 0 where it takes them, as soda itself does.</summary>
/// <param name="Value">Moles of protons by moles of the acid.</param>
public readonly record struct Protons(double Value);
