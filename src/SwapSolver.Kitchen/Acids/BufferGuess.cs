using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>What is taken for the buffer of a food that no row is known of.</summary>
/// <param name="NativePh">pH of the food by itself [pH].</param>
/// <param name="MilliequivalentsPerGProtein">Base that one gram of its protein takes up from pH 6 to pH 8 [mmol/g].</param>
public sealed record BufferGuess(Figure NativePh, Figure MilliequivalentsPerGProtein);
