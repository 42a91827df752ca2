using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Acids;

/// <summary>What takes the place of a dose of an acid or a base.</summary>
/// <param name="Dose">How much of the other [g], before it is rounded to a scale.</param>
/// <param name="WaterMore">Water that the other brings beyond what the first brought [g]; below 0 where it brings less.</param>
/// <param name="Equivalents">Protons, or bicarbonate, that either stands for [mmol].</param>
public sealed record EquivalentDose(Grams Dose, Grams WaterMore, Millimoles Equivalents);
