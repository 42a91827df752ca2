using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>What protein and phosphate of a food do to the pH: base taken up evenly from its own pH upwards, acid downwards.</summary>
/// <param name="NativePh">pH of the food by itself [pH].</param>
/// <param name="MilliequivalentsPer100G">Base that 100 g take up from pH 6 to pH 8 [mmol/100 g].</param>
public sealed record FoodBuffer(Figure NativePh, Figure MilliequivalentsPer100G);
