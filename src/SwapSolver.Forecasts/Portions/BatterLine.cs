using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Forecasts;

/// <summary>One line of a batter as a forecast reads it.</summary>
/// <param name="Facts">Its facts, as they were drawn.</param>
/// <param name="Grams">Its mass [g], above 0.</param>
/// <param name="Leavener">What is known of it as an acid, a base or a powder; null where it is none.</param>
/// <param name="Buffer">What is known of it as a buffer; null for a leavener, and where the guess is taken.</param>
internal readonly record struct BatterLine(FactSheet Facts, double Grams, Leavener? Leavener, FoodBuffer? Buffer);
